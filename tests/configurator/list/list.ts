/** Facts and answers of invented frames, to sort and filter. */
import type { FrameFacts } from '../../../src/configurator/list/facts.ts';
import type { FrameAnswer } from '../../../src/quote/frameList.ts';

/** Facts of a plain frame with a change. */
export const facts = (id: string, change: Partial<FrameFacts> = {}): FrameFacts => ({
  id,
  name: id,
  wearer: 'adult',
  mounting: 'full',
  widthsMm: [50],
  colours: ['black'],
  priceMinor: 10000,
  ...change,
});

/** An answer without findings, with a change. */
export const answer = (frame: string, change: Partial<FrameAnswer> = {}): FrameAnswer => ({
  frame,
  verdict: 'makeable',
  request: {
    frame,
    size: '50-18',
    prescription: null,
    lenses: { use: 'none', design: '', material: '', tint: null, coating: null },
  },
  totalMinor: 20000,
  sizeName: '50-18',
  lenses: ['Single vision', 'Standard plastic'],
  thickestMm: 3,
  findings: [],
  ...change,
});
