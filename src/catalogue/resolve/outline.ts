/** The outline of a size: fitted to A, B and ED, or traced, brought to the boxed centre and held against them. */
import { box } from '../../optics/outline.ts';
import { fitFamily, type OutlineFamily } from '../../optics/outlineFamily.ts';
import { recentre, resample } from '../../optics/outlineShape.ts';
import type { Outline } from '../../optics/types.ts';
import type { FaultDetail } from '../fault.ts';
import type { FrameOutline } from '../frame.ts';

/** Radii of every outline of the shop. */
const RADII = 360;

/** How far a trace may lie from the size's A, B and ED, mm: what a rule and a tracer together leave open. */
const TOLERANCE_MM = 0.1;

/** Measurements of a size, mm. */
export interface Boxed {
  readonly aMm: number;
  readonly bMm: number;
  readonly edMm: number;
}

/** An outline, or what is wrong with the field named. */
export type MadeOutline =
  | { readonly ok: true; readonly outline: FrameOutline }
  | {
      readonly ok: false;
      readonly faults: readonly { readonly field: string; readonly detail: FaultDetail }[];
    };

/** Radii to a micrometre: finer than any edger, and half the bytes. */
function rounded({ radiiMm }: Outline): readonly number[] {
  return radiiMm.map((radius) => Math.round(radius * 1000) / 1000);
}

/** The outline of `family` with these measurements, or the range of ED that the family reaches. */
export function makeFitted(family: OutlineFamily, size: Boxed): MadeOutline {
  const fitted = fitFamily(family, size);
  if (fitted.ok) return { ok: true, outline: { origin: 'fitted', family, radiiMm: rounded(fitted.outline) } };
  const [least, most] = [Math.ceil(fitted.leastEdMm * 10) / 10, Math.floor(fitted.mostEdMm * 10) / 10];
  const nearer = size.edMm < least ? least : most;
  return {
    ok: false,
    faults: [
      {
        field: 'ed',
        detail: {
          code: 'impossible-outline',
          expected: `an ed from ${least} to ${most} mm: ${family}, ${size.aMm} by ${size.bMm} mm`,
          received: `${size.edMm} mm`,
          hint: `Measure again; ${nearer} is the nearest that the family reaches. Or choose another family, or trace the lens.`,
        },
      },
    ],
  };
}

/** A traced outline by 360 radii from its boxed centre, mm; null where it is not the outline of a lens. */
export function centreTrace(radiiMm: readonly number[]): Outline | null {
  const centred = recentre(resample({ radiiMm }, RADII));
  return centred === null ? null : centred.outline;
}

/** A centred trace as the outline of a size, or each measurement that it disagrees with. */
export function makeTraced(name: string, trace: Outline, size: Boxed): MadeOutline {
  const traced = box(trace);
  const faults = (['a', 'b', 'ed'] as const).flatMap((field) => {
    const [written, measured] = [size[`${field}Mm`], traced[`${field}Mm`]];
    if (Math.abs(written - measured) <= TOLERANCE_MM + 1e-6) return [];
    const shown = Math.round(measured * 100) / 100;
    const detail: FaultDetail = {
      code: 'trace-disagrees',
      expected: `${field} within ${TOLERANCE_MM} mm of the traced outline ${name}: ${shown} mm`,
      received: `${written} mm`,
      hint: `Write ${Math.round(measured * 10) / 10}, name the outline of this size, or look for a slip in outlines/${name}.yaml.`,
    };
    return [{ field, detail }];
  });
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, outline: { origin: 'traced', family: null, radiiMm: rounded(trace) } };
}
