/** A package with changes made to it. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Frame } from '../catalogue/frame.ts';
import type { PackageChange } from './change.ts';
import { fitInHeight, hasHeights } from './heights.ts';
import type { PairRequest } from './request.ts';

/** The package after the changes; in another size or frame its heights are an estimate, see heights.ts. */
export const withChanges = (
  { frames }: Pick<Offer, 'frames'>,
  pair: PairRequest,
  changes: readonly PackageChange[],
): PairRequest =>
  changes.reduce((before, change) => {
    const after = withChange(before, change);
    const [fromMm, toMm] = [heightOf(frames, before), heightOf(frames, after)];
    if (before.fit === undefined || fromMm === null || toMm === null) return after;
    return { ...after, fit: fitInHeight(before.fit, fromMm, toMm) };
  }, pair);

/** Whether heights that were measured must be measured again after the changes. */
export const asksHeights = ({ fit }: PairRequest, changes: readonly PackageChange[]): boolean =>
  fit !== undefined && hasHeights(fit) && changes.some(({ kind }) => kind === 'size' || kind === 'frame');

/** B of the lens that a package is for, mm; null where the shop has none such. */
function heightOf(frames: readonly Frame[], { frame: id, size }: PairRequest): number | null {
  const sizes = frames.find((frame) => frame.id === id)?.sizes ?? [];
  const found = size === undefined && sizes.length === 1 ? sizes[0] : sizes.find((one) => one.id === size);
  return found?.bMm ?? null;
}

function withChange(pair: PairRequest, change: PackageChange): PairRequest {
  const { kind, value } = change;
  switch (kind) {
    case 'frame': {
      const { size, colourway, ...rest } = pair;
      return { ...rest, frame: value, ...placed(change.size ?? size, change.colourway ?? colourway) };
    }
    case 'size':
      return { ...pair, size: value };
    case 'colourway':
      return { ...pair, colourway: value };
    case 'blank':
      return { ...pair, lenses: { ...pair.lenses, blank: value as 'stock' | 'surfaced' } };
    default:
      return { ...pair, lenses: { ...pair.lenses, [kind]: value } };
  }
}

const placed = (size: string | undefined, colourway: string | undefined) => ({
  ...(size === undefined ? {} : { size }),
  ...(colourway === undefined ? {} : { colourway }),
});
