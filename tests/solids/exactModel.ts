/**
 * A lens as an exact solid: circles turned about axes, cut with one another. The back is the tyre that an arc leaves
 * when it turns about its axle. Nothing here is a mesh and nothing is a formula for sag. z runs from the front to
 * the eye, the front vertex at 0; lengths in mm, angles in degrees.
 */
import init, { type TopoDS_Edge, type TopoDS_Shape } from 'replicad-opencascadejs';
import type { SolidLens } from '../optics/solids/meshModel.ts';

const oc = await init();

type Vector = readonly [number, number, number];

const REACH = 60;
const point = ([x, y, z]: Vector) => new oc.gp_Pnt(x, y, z);
const along = (from: Vector, u: Vector, a: number, w: Vector, b: number): Vector => [
  from[0] + a * u[0] + b * w[0],
  from[1] + a * u[1] + b * w[1],
  from[2] + a * u[2] + b * w[2],
];

const straight = (a: Vector, b: Vector): TopoDS_Edge =>
  new oc.BRepBuilderAPI_MakeEdge(point(a), point(b)).Edge();

function arc(a: Vector, b: Vector, c: Vector): TopoDS_Edge {
  return new oc.BRepBuilderAPI_MakeEdge(
    new oc.GC_MakeArcOfCircle(point(a), point(b), point(c)).Value(),
  ).Edge();
}

/** The body that the area within these edges sweeps when it turns once about the axis. */
function turned(edges: readonly TopoDS_Edge[], through: Vector, towards: Vector): TopoDS_Shape {
  const wire = new oc.BRepBuilderAPI_MakeWire();
  for (const edge of edges) wire.Add(edge);
  const face = new oc.BRepBuilderAPI_MakeFace(wire.Wire(), true).Face();
  const axis = new oc.gp_Ax1(point(through), new oc.gp_Dir(...towards));
  return new oc.BRepPrimAPI_MakeRevol(face, axis, 2 * Math.PI).Shape();
}

/** Depth of a circle's arc at the height `a` from its top, from the circle itself. */
function onCircle(radius: number, a: number): number {
  const turn = Math.asin(a / radius);
  return radius * (1 - Math.cos(turn));
}

function behindFront(radius: number): TopoDS_Shape {
  const widest = Math.min(REACH, 0.999 * Math.abs(radius));
  const [half, edge] = [onCircle(radius, widest / 2), onCircle(radius, widest)];
  const corners: Vector[] = [
    [0, 0, 0],
    [widest / 2, 0, half],
    [widest, 0, edge],
    [widest, 0, 150],
    [0, 0, 150],
  ];
  const [top, middle, end, up, back] = corners as [Vector, Vector, Vector, Vector, Vector];
  return turned(
    [arc(top, middle, end), straight(end, up), straight(up, back), straight(back, top)],
    top,
    [0, 0, 1],
  );
}

/** Turns a vector about z by `deg`, and about y by `deg`. */
const aboutZ = ([x, y, z]: Vector, deg: number): Vector => {
  const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return [c * x - s * y, s * x + c * y, z];
};
const aboutY = ([x, y, z]: Vector, deg: number): Vector => {
  const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return [c * x + s * z, y, c * z - s * x];
};

function tyre(lens: SolidLens): TopoDS_Shape {
  const tilted = (v: Vector) => aboutZ(aboutY(aboutZ(v, -lens.tiltTowards), -lens.tilt), lens.tiltTowards);
  const u = tilted(aboutZ([1, 0, 0], lens.arcDirection));
  const w = tilted([0, 0, 1]);
  const vertex: Vector = [0, 0, lens.centreThickness];
  const widest = Math.min(REACH, 0.999 * Math.abs(lens.arcRadius));
  const depth = onCircle(lens.arcRadius, widest);
  const [a, b] = [along(vertex, u, -widest, w, depth), along(vertex, u, widest, w, depth)];
  const [c, d] = [
    along(vertex, u, widest, w, lens.tyreRadius),
    along(vertex, u, -widest, w, lens.tyreRadius),
  ];
  const axle = along(vertex, u, 0, w, lens.tyreRadius);
  return turned([arc(a, vertex, b), straight(b, c), straight(c, d), straight(d, a)], axle, u);
}

function prism(outline: SolidLens['outline'], bottom: number, top: number): TopoDS_Shape {
  const wire = new oc.BRepBuilderAPI_MakeWire();
  outline.forEach(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length] as readonly [number, number];
    wire.Add(straight([x, y, bottom], [nextX, nextY, bottom]));
  });
  const face = new oc.BRepBuilderAPI_MakeFace(wire.Wire(), true).Face();
  return new oc.BRepPrimAPI_MakePrism(face, new oc.gp_Vec(0, 0, top - bottom)).Shape();
}

/** Volume of the cut lens, mm cubed, and its thickness along z at each place from the reference point, mm. */
export function measureExactly(
  lens: SolidLens,
  places: readonly (readonly [number, number])[],
): { readonly thickness: number[]; readonly volume: number } {
  const hollow = lens.tyreRadius > 0;
  const top = hollow
    ? lens.centreThickness + 0.7 * Math.min(80, lens.tyreRadius, Math.abs(lens.arcRadius))
    : 60;
  const front = behindFront(lens.frontRadius);
  const back = tyre(lens);
  const cut = new oc.BRepAlgoAPI_Common(front, prism(lens.outline, -30, top)).Shape();
  const body = hollow
    ? new oc.BRepAlgoAPI_Cut(cut, back).Shape()
    : new oc.BRepAlgoAPI_Common(cut, back).Shape();
  const volume = new oc.GProp_GProps();
  oc.BRepGProp.VolumeProperties(body, volume, 1e-6, false, false);
  const thickness = places.map(([x, y]) => {
    const line = straight([x, y, -30], [x, y, top]);
    const behind = new oc.BRepAlgoAPI_Common(line, front).Shape();
    const inside = hollow
      ? new oc.BRepAlgoAPI_Cut(behind, back).Shape()
      : new oc.BRepAlgoAPI_Common(behind, back).Shape();
    const length = new oc.GProp_GProps();
    oc.BRepGProp.LinearProperties(inside, length, false, false);
    return length.Mass();
  });
  return { thickness, volume: volume.Mass() };
}
