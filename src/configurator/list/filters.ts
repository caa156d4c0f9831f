/** Which frames of a list are shown. */
import type { MountingKind } from '../../catalogue/frame.ts';
import type { FrameAnswer, Within } from '../../quote/frameList.ts';
import { type ColourFamily, colourFamily } from './colourFamily.ts';
import type { FrameFacts } from './facts.ts';

/** null: any. */
export interface Filters {
  /** Only frames whose best package can be made. */
  readonly able: boolean;
  /** Lens width, whole mm. */
  readonly widthFromMm: number | null;
  readonly widthToMm: number | null;
  readonly mounting: MountingKind | null;
  readonly colour: ColourFamily | null;
  /** Of the whole pair where it was priced, else of the frame; minor units. */
  readonly priceToMinor: number | null;
}

export const NO_FILTERS: Filters = {
  able: false,
  widthFromMm: null,
  widthToMm: null,
  mounting: null,
  colour: null,
  priceToMinor: null,
};

/** The part of the filters that a frame's best package is looked for in. */
export type Limits = Pick<Filters, 'widthFromMm' | 'widthToMm' | 'colour'>;

/** Sizes and colourways that the filters leave. */
export const withinOf =
  ({ widthFromMm, widthToMm, colour }: Limits): Within =>
  ({ aMm }, { front }) =>
    Math.round(aMm) >= (widthFromMm ?? 0) &&
    Math.round(aMm) <= (widthToMm ?? Number.POSITIVE_INFINITY) &&
    (colour === null || colourFamily(front.colour) === colour);

/** Whether a frame is shown; `answer` is undefined while it has none. */
export function passes(facts: FrameFacts, answer: FrameAnswer | undefined, filters: Filters): boolean {
  const { able, widthFromMm, widthToMm, mounting, colour, priceToMinor } = filters;
  const made = answer !== undefined && answer.verdict !== 'refused';
  const priceMinor = made ? answer.totalMinor : facts.priceMinor;
  return (
    (!able || made) &&
    (mounting === null || facts.mounting === mounting) &&
    (colour === null || facts.colours.includes(colour)) &&
    facts.widthsMm.some((mm) => mm >= (widthFromMm ?? 0) && mm <= (widthToMm ?? Number.POSITIVE_INFINITY)) &&
    (priceToMinor === null || (priceMinor !== null && priceMinor <= priceToMinor))
  );
}
