/** A finished pair held against its order by the shop's tolerance profile, and what would bring a failed one in. */
import { inspect } from '../../optics/tolerance/inspect.ts';
import type { InspectedItem } from '../../optics/tolerance/limit.ts';
import { rounded } from '../../optics/tolerance/limit.ts';
import type { JudgedPair } from '../../quote/judgePair.ts';
import type { WorkroomOffer } from '../openJob.ts';
import type { MeasuredPair } from './measured.ts';
import type { CureOf, PairInspection } from './pairInspection.ts';
import { toleranceProfile } from './profile.ts';
import { pairToInspect } from './toInspect.ts';

/** Items that layout and cutting decide; all others come with the lens. */
const OF_CUTTING =
  /^(?:axis|(?:horizontal|vertical)-(?:prism|reference-point)|segment-(?:height|height-difference|separation|tilt)|fitting-cross-.*|polarising-axis)$/;

/** The inspection of a measured pair; null where a lens of the order cannot be computed. */
export function inspectPair(
  judged: JudgedPair,
  measured: MeasuredPair,
  { workroom, shop }: WorkroomOffer,
): PairInspection | null {
  const pair = pairToInspect(judged, measured);
  if (pair === null) return null;
  const profile = toleranceProfile(workroom.tolerance, shop.name);
  const inspection = inspect(pair, profile, workroom.tolerance.memoryChecked);
  const misaligned = workroom.alignment.flatMap((_, at) => (measured.alignment[at] === true ? [] : [at + 1]));
  return {
    inspection,
    profile,
    measured,
    cures: inspection.items.flatMap((item) => cureOf(item)),
    misaligned,
    passed: inspection.passed === true && misaligned.length > 0 ? false : inspection.passed,
  };
}

function cureOf(item: InspectedItem): CureOf[] {
  if (item.outcome === 'not measured') return [{ item, cure: 'measure', by: null }];
  if (item.outcome !== 'fail' || item.deviation === null || item.limit === null) return [];
  const by = rounded(Math.abs(item.deviation) - item.limit);
  return [{ item, cure: OF_CUTTING.test(item.item) ? 'recut' : 'reorder', by }];
}
