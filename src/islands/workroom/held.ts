/** An order that is open, as the page holds it in memory, and what the shop answers to it now. */
import type { Slots } from '../../catalogue/words.ts';
import { consentsOpen } from '../../workroom/consented.ts';
import { type Job, jobOf, shownNumber, wearers } from '../../workroom/job.ts';
import { type OpenedJob, openJob, type WorkroomOffer } from '../../workroom/openJob.ts';
import { type Verification, verify } from '../../workroom/verify.ts';
import type { Orders, ReadFile } from './orders.ts';

export interface Held {
  /** Order number; with a piece of the digest where another order has the same. */
  readonly id: string;
  readonly digest: string;
  readonly job: Job;
  /** Number as it is read aloud. */
  readonly shown: string;
  /** Buyer and wearers, for the search. */
  readonly names: readonly string[];
  /** Sentences on where the order comes from. */
  readonly provenance: readonly string[];
  readonly attachments: readonly HeldAttachment[];
  /** The file as it came; null where it was not sealed. */
  readonly sealedBytes: Uint8Array | null;
}

export interface HeldAttachment {
  /** Index of the pair. */
  readonly pair: number;
  readonly type: keyof Orders['attachmentEnds'];
  readonly base64: string;
}

interface Holding {
  readonly offer: WorkroomOffer;
  /** Of the shop as it is now. */
  readonly version: string;
  readonly t: (key: string, slots?: Slots) => string;
  readonly id: string;
  readonly sealedBytes: Uint8Array | null;
}

/** The order as the workroom holds it. */
export function holdOrder(read: ReadFile, holding: Holding): Held {
  const { order, digest } = read;
  const { id, sealedBytes } = holding;
  const job = jobOf(order);
  return {
    ...{ id, digest, job, sealedBytes },
    shown: shownNumber(job),
    names: [...new Set([order.buyer.name, ...wearers(job, null)])],
    provenance: provenance(read, holding),
    attachments: order.pairs.flatMap(({ prescription }, pair) =>
      (prescription?.attachments ?? []).map(({ type, base64 }) => ({ pair, type, base64 })),
    ),
  };
}

function provenance({ order, sealed }: ReadFile, { offer, version, t }: Holding): string[] {
  const { shop } = offer;
  return [
    ...(order.shop.address === shop.address
      ? []
      : [t('from.otherShop', { name: order.shop.name, address: order.shop.address })]),
    ...(sealed ? [] : [t('from.open')]),
    ...(order.shop.version === version ? [] : [t('from.version')]),
    ...consentsOpen(order, shop).map((id) => t('from.consent', { id })),
  ];
}

export interface Looked {
  readonly opened: OpenedJob;
  readonly checked: Verification;
}

/** Judges an order again when it is looked at, and once: of a thousand files few are looked at. */
export function lookingAt(offer: WorkroomOffer): (held: Held) => Looked {
  const seen = new WeakMap<Held, Looked>();
  return (held) => {
    const known = seen.get(held);
    if (known !== undefined) return known;
    const opened = openJob(held.job, offer);
    const looked = { opened, checked: verify(opened) };
    seen.set(held, looked);
    return looked;
  };
}
