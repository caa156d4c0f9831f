/**
 * The frames of a shop as a worksheet loads them when it looks for another one: without stories, outlines as steps.
 * All figures come back as they were, to the last digit, so that advice is the same here as on the command line.
 */
import type { Frame, FrameSize } from '../catalogue/frame.ts';

/** Radii are declared to 0.001 mm; finer ones are sent as they are. */
const STEPS_PER_MM = 1000;

type PackedSize = Omit<FrameSize, 'outline'> & {
  readonly outline: Omit<FrameSize['outline'], 'radiiMm'> & {
    /** Radii in 0.001 mm: how much each differs from where the two before it lead. */
    readonly bends?: readonly number[];
    readonly radiiMm?: readonly number[];
  };
};

/** A frame as it is sent. */
export type PackedFrame = Omit<Frame, 'sizes'> & { readonly sizes: readonly PackedSize[] };

/** Frames that may stand in for each other: for the same light, since anybody may wear what was made for another. */
export const frameGroup = ({ sun }: Pick<Frame, 'sun'>): string => (sun ? 'sun' : 'clear');

/** A frame to send. */
export function packFrame(frame: Frame): PackedFrame {
  return {
    ...frame,
    story: '',
    sizes: frame.sizes.map((size) => {
      const { radiiMm, ...outline } = size.outline;
      const steps = radiiMm.map((mm) => Math.round(mm * STEPS_PER_MM));
      const exact = steps.every((step, i) => step / STEPS_PER_MM === radiiMm[i]);
      return { ...size, outline: { ...outline, ...(exact ? { bends: bendsOf(steps) } : { radiiMm }) } };
    }),
  };
}

/** The frame that was sent. */
export function unpackFrame(packed: PackedFrame): Frame {
  return {
    ...packed,
    sizes: packed.sizes.map((size) => {
      const { bends, radiiMm, ...outline } = size.outline;
      return { ...size, outline: { ...outline, radiiMm: radiiMm ?? radiiOf(bends ?? []) } };
    }),
  };
}

const bendsOf = (steps: readonly number[]): readonly number[] =>
  steps.map((step, i) => step - 2 * (steps[i - 1] ?? 0) + (steps[i - 2] ?? 0));

function radiiOf(bends: readonly number[]): readonly number[] {
  let [before, last] = [0, 0];
  return bends.map((bend) => {
    [before, last] = [last, bend + 2 * last - before];
    return last / STEPS_PER_MM;
  });
}
