/** A frame that the shopper already has: its outline from radii, or fitted to A, B, ED and a family. */
import { box } from '../optics/outline.ts';
import { fitFamily, OUTLINE_FAMILIES, type OutlineFamily } from '../optics/outlineFamily.ts';
import { recentre } from '../optics/outlineShape.ts';
import type { Fault } from './fault.ts';
import type { OwnMeasures } from './ownMeasures.ts';
import type { OwnFrame } from './request.ts';

/** Radii may differ from the stated A and B by this, mm: what a careful trace agrees within. */
const TRACE_AGREES_MM = 0.2;

/** The frame as measured, or null with the faults added. */
export function resolveOwnFrame(own: OwnFrame, path: string, faults: Fault[]): OwnMeasures | null {
  const common = {
    aMm: own.a,
    bMm: own.b,
    dblMm: own.dbl,
    faceFormDeg: own.faceForm ?? 0,
    mounting: own.mounting,
  };
  if (own.radii !== undefined) {
    const radiiMm = traced(own, own.radii, path, faults);
    return radiiMm && { ...common, radiiMm, outlineOrigin: 'traced' };
  }
  const radiiMm = fitted(own, path, faults);
  return radiiMm && { ...common, radiiMm, outlineOrigin: 'fitted' };
}

function traced(own: OwnFrame, radiiMm: readonly number[], path: string, faults: Fault[]) {
  const outline = recentre({ radiiMm })?.outline;
  if (outline === undefined) {
    faults.push({
      path: `${path}.radii`,
      message: 'These radii do not make one closed shape round a centre.',
      expected: 'radii of the right lens at equal angles, counter-clockwise, all above 0',
      found: `${radiiMm.length} radii that cross themselves`,
    });
    return null;
  }
  const { aMm, bMm } = box(outline);
  if (Math.abs(aMm - own.a) <= TRACE_AGREES_MM && Math.abs(bMm - own.b) <= TRACE_AGREES_MM)
    return outline.radiiMm;
  faults.push({
    path: `${path}.radii`,
    message: 'The radii do not have the box that is stated.',
    expected: `A ${own.a} mm, B ${own.b} mm (within ${TRACE_AGREES_MM} mm)`,
    found: `A ${aMm.toFixed(2)} mm, B ${bMm.toFixed(2)} mm`,
  });
  return null;
}

function fitted(own: OwnFrame, path: string, faults: Fault[]) {
  const family = own.family ?? 'panto';
  if (!OUTLINE_FAMILIES.includes(family as OutlineFamily)) {
    faults.push({
      path: `${path}.family`,
      message: 'There is no outline family of this name.',
      expected: OUTLINE_FAMILIES.join(', '),
      found: family,
    });
    return null;
  }
  const named = family as OutlineFamily;
  const edMm = own.ed ?? usualEdMm(named, own);
  const fit = fitFamily(named, { aMm: own.a, bMm: own.b, edMm });
  if (fit.ok) return fit.outline.radiiMm;
  faults.push({
    path: `${path}.ed`,
    message: 'No outline of this family has these measurements.',
    expected: Number.isNaN(fit.leastEdMm)
      ? 'A and B above 0 mm'
      : `ED from ${fit.leastEdMm.toFixed(2)} to ${fit.mostEdMm.toFixed(2)} mm`,
    found: `${edMm} mm`,
    told: Number.isNaN(fit.leastEdMm)
      ? { code: 'no-outline-box', slots: {} }
      : { code: 'no-outline', slots: { least: fit.leastEdMm.toFixed(2), most: fit.mostEdMm.toFixed(2) } },
  });
  return null;
}

/** Where the ED is not known: two fifths up the range that the family reaches in this box, mm. */
export function usualEdMm(family: OutlineFamily, own: Pick<OwnFrame, 'a' | 'b'>): number {
  const reach = fitFamily(family, { aMm: own.a, bMm: own.b, edMm: Math.min(own.a, own.b) / 2 });
  return reach.ok ? Math.min(own.a, own.b) / 2 : reach.leastEdMm + 0.4 * (reach.mostEdMm - reach.leastEdMm);
}
