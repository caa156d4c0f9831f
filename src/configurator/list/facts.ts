/** What a list sorts and filters its frames by, whatever the prescription. */
import type { Frame, MountingKind } from '../../catalogue/frame.ts';
import { type ColourFamily, colourFamily } from './colourFamily.ts';

export interface FrameFacts {
  readonly id: string;
  readonly name: string;
  readonly wearer: Frame['wearer'];
  readonly mounting: MountingKind;
  /** Lens widths A of its sizes, whole mm, ascending. */
  readonly widthsMm: readonly number[];
  /** Of its fronts. */
  readonly colours: readonly ColourFamily[];
  /** Of the frame by itself, minor units. */
  readonly priceMinor: number;
}

/** Facts of a frame; `priceMinor` is the least that it is sold for. */
export function factsOf(frame: Frame, priceMinor: number): FrameFacts {
  const widths = frame.sizes.map(({ aMm }) => Math.round(aMm));
  return {
    id: frame.id,
    name: frame.model,
    wearer: frame.wearer,
    mounting: frame.mounting.kind,
    widthsMm: [...new Set(widths)].sort((one, other) => one - other),
    colours: [...new Set(frame.colourways.map(({ front }) => colourFamily(front.colour)))],
    priceMinor,
  };
}
