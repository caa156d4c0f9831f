/**
 * A lens as a mesh solid, from radii alone: a revolved front, a revolved tyre for the back, the outline as a prism,
 * and what they have in common. It shares no formula with what it checks: sags never appear, only turned arcs.
 * z runs from the front to the eye, the front vertex at 0. Facets shrink with the square of their count, so two
 * counts give the limit (Richardson).
 */
import start from 'manifold-3d';

/** What the solid is made from; lengths in mm, angles in degrees; radii positive when the centre is towards the eye. */
export interface SolidLens {
  readonly frontRadius: number;
  readonly arcRadius: number;
  readonly tyreRadius: number;
  readonly arcDirection: number;
  /** The back is turned by `tilt` about its vertex, rising towards `tiltTowards`. */
  readonly tilt: number;
  readonly tiltTowards: number;
  readonly centreThickness: number;
  /** Corners of the cut shape, counter-clockwise, from the reference point. */
  readonly outline: readonly (readonly [number, number])[];
}

const wasm = await start();
wasm.setup();
const { Manifold } = wasm;
type Solid = InstanceType<typeof Manifold>;

const REACH = 75;

/** Half a circle's arc from its top outwards, as (across, depth) points; the centre is at depth `radius`. */
function arc(radius: number, from: number, count: number): [number, number][] {
  const widest = Math.asin(Math.min(0.99999, REACH / Math.abs(radius)));
  const points: [number, number][] = [];
  for (let i = 0; i <= count; i++) {
    const angle = from * widest + ((1 - from) * widest * i) / count;
    points.push([Math.abs(radius) * Math.sin(angle), radius * (1 - Math.cos(angle))]);
  }
  return points;
}

/** All that lies behind the front surface. */
function behindFront(radius: number, count: number): Solid {
  const curve = arc(radius, 0, count / 4);
  const widest = curve.at(-1)?.[0] ?? 0;
  return Manifold.revolve([[...curve, [widest, 200], [0, 200]]], count);
}

/** The turned tyre: what the back surface hollows out, or, when it bulges, what it leaves. */
function tyre(lens: SolidLens, count: number): Solid {
  const hollow = lens.tyreRadius > 0;
  const long = Math.abs(lens.tyreRadius);
  const profile = arc(lens.arcRadius, -1, count / 2).map(([across, depth]): [number, number] => [
    hollow ? long - depth : long + depth,
    across,
  ]);
  const half = (Math.asin(Math.min(1, REACH / long)) * 180) / Math.PI;
  const first = profile[0]?.[1] ?? 0;
  const last = profile.at(-1)?.[1] ?? 0;
  const turned = Manifold.revolve(
    [[[0, first], ...profile, [0, last]].map(([a, b]) => [a, b]) as [number, number][]],
    count / 2,
    2 * half,
  ).rotate(0, 0, 90 - half);
  const s = hollow ? -1 : 1;
  const laid = turned.transform([0, s, 0, 0, 0, 0, s, 0, 1, 0, 0, 0, 0, 0, lens.tyreRadius, 1]);
  return laid
    .rotate(0, 0, lens.arcDirection - lens.tiltTowards)
    .rotate(0, -lens.tilt, 0)
    .rotate(0, 0, lens.tiltTowards)
    .translate(0, 0, lens.centreThickness);
}

/** The cut lens with `count` facets to a turn. */
function cut(lens: SolidLens, outline: SolidLens['outline'], count: number): Solid {
  const hollow = lens.tyreRadius > 0;
  // Below the tyre's own ends, above the edge of any lens.
  const top = hollow
    ? lens.centreThickness + 0.7 * Math.min(80, lens.tyreRadius, Math.abs(lens.arcRadius))
    : 100;
  const prism = Manifold.extrude([outline.map(([x, y]): [number, number] => [x, y])], top + 40).translate(
    0,
    0,
    -40,
  );
  const body = behindFront(lens.frontRadius, count).intersect(prism);
  const back = tyre(lens, count);
  return hollow ? body.subtract(back) : body.intersect(back);
}

const limit = (coarse: number, fine: number) => (4 * fine - coarse) / 3;

/** Thickness along z at each place (from the reference point), mm, and the volume, mm cubed. */
export function measure(
  lens: SolidLens,
  places: readonly (readonly [number, number])[],
): { readonly thickness: number[]; readonly volume: number } {
  // Places on the edge are probed in a lens cut a little larger.
  const middleX = (Math.max(...lens.outline.map(([x]) => x)) + Math.min(...lens.outline.map(([x]) => x))) / 2;
  const middleY =
    (Math.max(...lens.outline.map(([, y]) => y)) + Math.min(...lens.outline.map(([, y]) => y))) / 2;
  const larger = lens.outline.map(([x, y]): [number, number] => [
    x + 0.01 * (x - middleX),
    y + 0.01 * (y - middleY),
  ]);
  const [coarse, fine] = [192, 384].map((count) => {
    const probed = cut(lens, larger, count);
    const exact = cut(lens, lens.outline, count);
    const thickness = places.map(([x, y]) => {
      const hits = probed.rayCast([x, y, -60], [x, y, 120]).map((hit) => hit.position[2]);
      return Math.max(...hits) - Math.min(...hits);
    });
    const volume = exact.volume();
    probed.delete();
    exact.delete();
    return { thickness, volume };
  });
  if (!coarse || !fine) throw new Error('two counts are measured');
  return {
    thickness: fine.thickness.map((mm, i) => limit(coarse.thickness[i] ?? Number.NaN, mm)),
    volume: limit(coarse.volume, fine.volume),
  };
}
