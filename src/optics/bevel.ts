/**
 * The bevel and the rim: where the apex runs on the edge of a lens, and how much of the edge then shows in front of
 * and behind the rim. The apex sits in the groove of the rim, a given depth behind the rim's front. Edge thickness
 * is that at the outline, which is the apex, so the figure is a little high for a strong minus lens.
 */
import { conicSag } from './surface.ts';

/** How the bevel is cut. */
export interface Bevel {
  /** From its foot to the apex, mm. */
  readonly heightMm: number;
  /** Angle between its two faces, degrees. */
  readonly angleDeg: number;
  /**
   * `share`: the apex is at this share of the edge from the front, 0 to 1. `curve`: it runs on a sphere of this
   * radius (mm) as the rim does, put where its mean is nearest to the share.
   */
  readonly follows: 'share' | 'curve';
  readonly shareFromFront: number;
  readonly curveRadiusMm: number;
}

/** The rim that holds it, mm from front to back. */
export interface Rim {
  readonly depthMm: number;
  /** From the front of the rim to the middle of its groove. */
  readonly grooveFromFrontMm: number;
}

/** The edge of a finished lens: its thickness and the depth of its front, one for each radius, mm. */
export interface LensEdge {
  readonly edgeMm: readonly number[];
  /** Sag of the front at the edge, towards the eye. */
  readonly frontMm: readonly number[];
  /** Outline radii from the boxed centre. */
  readonly radiiMm: readonly number[];
}

/** Where the apex runs and what shows, one figure for each radius, mm. */
export interface BevelPlacement {
  readonly apexFromFrontMm: readonly number[];
  readonly inFrontMm: readonly number[];
  readonly behindMm: readonly number[];
  readonly mostInFront: { readonly mm: number; readonly atDeg: number };
  readonly mostBehind: { readonly mm: number; readonly atDeg: number };
  /** Where the edge is narrower than the foot of the bevel, or the curve leaves it: by how much at worst; else null. */
  readonly tooThin: { readonly missingMm: number; readonly atDeg: number } | null;
}

/** Width of the foot of a bevel, mm: 2 h tan(angle/2). The least edge that holds it whole. */
export function bevelWidthMm(bevel: Pick<Bevel, 'heightMm' | 'angleDeg'>): number {
  return 2 * bevel.heightMm * Math.tan((bevel.angleDeg * Math.PI) / 360);
}

/** Distances of the apex behind the front edge, mm, before it is looked at whether the edge holds them. */
function apexPath(edge: LensEdge, bevel: Bevel): number[] {
  const { edgeMm, frontMm, radiiMm } = edge;
  if (bevel.follows === 'share') return edgeMm.map((mm) => bevel.shareFromFront * mm);
  const half = bevelWidthMm(bevel) / 2;
  const rim = radiiMm.map((r) => conicSag(1 / bevel.curveRadiusMm, 0, r * r));
  let mean = 0;
  let least = Number.NEGATIVE_INFINITY;
  let most = Number.POSITIVE_INFINITY;
  for (let i = 0; i < edgeMm.length; i++) {
    const front = (frontMm[i] as number) - (rim[i] as number);
    const mm = edgeMm[i] as number;
    mean += (front + bevel.shareFromFront * mm) / edgeMm.length;
    least = Math.max(least, front + half);
    most = Math.min(most, front + mm - half);
  }
  // The whole curve may be moved along the axis as long as no part of the foot leaves the edge.
  const depth = least <= most ? Math.min(Math.max(mean, least), most) : (least + most) / 2;
  return edgeMm.map((_, i) => depth + (rim[i] as number) - (frontMm[i] as number));
}

/** Where the bevel runs on an edge and what of the edge shows beyond the rim. Null when the curve does not reach. */
export function placeBevel(edge: LensEdge, bevel: Bevel, rim: Rim): BevelPlacement | null {
  const apexFromFrontMm = apexPath(edge, bevel);
  if (!apexFromFrontMm.every(Number.isFinite)) return null;
  const n = apexFromFrontMm.length;
  const half = bevelWidthMm(bevel) / 2;
  const behindGroove = rim.depthMm - rim.grooveFromFrontMm;
  const inFrontMm = apexFromFrontMm.map((mm) => Math.max(0, mm - rim.grooveFromFrontMm));
  const behindMm = apexFromFrontMm.map((mm, i) =>
    Math.max(0, (edge.edgeMm[i] as number) - mm - behindGroove),
  );
  const missing = apexFromFrontMm.map((mm, i) => {
    const thickness = edge.edgeMm[i] as number;
    return Math.max(
      2 * half - thickness,
      bevel.follows === 'curve' ? half - Math.min(mm, thickness - mm) : 0,
    );
  });
  const worst = greatest(missing);
  const atDeg = (i: number) => (i * 360) / n;
  const place = (list: readonly number[]) => {
    const i = greatest(list);
    return { mm: list[i] as number, atDeg: atDeg(i) };
  };
  return {
    apexFromFrontMm,
    inFrontMm,
    behindMm,
    mostInFront: place(inFrontMm),
    mostBehind: place(behindMm),
    tooThin:
      (missing[worst] as number) > 1e-9 ? { missingMm: missing[worst] as number, atDeg: atDeg(worst) } : null,
  };
}

function greatest(list: readonly number[]): number {
  let at = 0;
  for (let i = 1; i < list.length; i++) if ((list[i] as number) > (list[at] as number)) at = i;
  return at;
}
