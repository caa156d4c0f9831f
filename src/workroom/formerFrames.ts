/** An order that names frames as they were called before, told in the names of today. */
import type { FormerNames } from '../catalogue/formerNames.ts';
import type { Job } from './job.ts';

/** A pair whose frame is called otherwise now. */
export interface MovedFrame {
  /** Index of the pair. */
  readonly pair: number;
  readonly from: string;
  readonly to: string;
}

/** The job with the names of today in its request and in what was shown, and which frames that are. */
export function followFormer(job: Job, former: FormerNames): { job: Job; moved: readonly MovedFrame[] } {
  const { order } = job;
  const moved = order.request.pairs.flatMap(({ frame }, pair): MovedFrame[] => {
    const to = typeof frame === 'string' ? former.get(frame) : undefined;
    return to === undefined ? [] : [{ pair, from: String(frame), to }];
  });
  if (moved.length === 0) return { job, moved };
  const now = ({ source, ...line }: (typeof order.shown.price.lines)[number]) => {
    const id = source.startsWith('frames/') ? former.get(source.slice('frames/'.length)) : undefined;
    return { ...line, source: id === undefined ? source : `frames/${id}` };
  };
  const pairs = order.request.pairs.map((pair, at) => {
    const to = moved.find((one) => one.pair === at)?.to;
    return to === undefined ? pair : { ...pair, frame: to };
  });
  const price = { ...order.shown.price, lines: order.shown.price.lines.map(now) };
  const request = { ...order.request, pairs };
  return { job: { ...job, order: { ...order, request, shown: { ...order.shown, price } } }, moved };
}
