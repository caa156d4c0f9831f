/** An order that was opened: its papers as files, and what the owner is told of it in the terminal. */
import type { Catalogue } from '../catalogue/catalogue.ts';
import { formatMoney } from '../money/format.ts';
import { ATTACHMENT_ENDS } from '../order/attachment.ts';
import { fromBase64 } from '../order/base64.ts';
import { showNumber } from '../order/number.ts';
import type { Order } from '../order/order.ts';
import type { ReadOrder } from '../order/readOrder.ts';
import { consentsOpen } from '../workroom/consented.ts';
import { jobOf } from '../workroom/job.ts';
import { openJob } from '../workroom/openJob.ts';
import { papersOf, printable } from '../workroom/papers.ts';
import { type Verification, verify } from '../workroom/verify.ts';

export interface NamedFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

export interface OpenedOrder {
  readonly files: readonly NamedFile[];
  /** One line that says whose order it is and what it comes to. */
  readonly headline: string;
  /** Where it is not as the buyer saw it; empty where all is the same. */
  readonly differences: readonly string[];
  /** Whether each pair can be made as the shop is now. */
  readonly makeable: boolean;
  /** What to ask or tell before anything is made. */
  readonly asks: readonly string[];
}

/** The opened order; `base` is what its files are called, without an end, and `version` that of the shop now. */
export function openedOrder(
  read: Extract<ReadOrder, { ok: true }>,
  catalogue: Catalogue,
  base: string,
  version: string,
): OpenedOrder {
  const { order, sealed } = read;
  const job = jobOf(order);
  const opened = openJob(job, catalogue);
  const checked = verify(opened);
  const title = `${showNumber(order.number)} ${catalogue.shop.name}`;
  const html = printable(papersOf(job, catalogue), title, catalogue.shop.language);
  const money = moneyOf(catalogue);
  const verdicts = opened.pairs.map((pair) => pair?.answer.verdict ?? 'not readable any more');
  const count = verdicts.length === 1 ? '1 pair' : `${verdicts.length} pairs`;
  return {
    files: [{ name: `${base}.html`, content: html }, ...attachmentFiles(order, base)],
    headline: `${showNumber(order.number)}  ${order.buyer.name}, ${order.request.date}, ${count}, ${money(order.shown.price.total)}: ${verdicts.join(', ')}`,
    makeable: opened.pairs.every((pair) => pair !== null && pair.answer.verdict !== 'refused'),
    differences: differencesOf(checked, money),
    asks: [...provenance(order, catalogue, sealed, version), ...callsOf(checked)],
  };
}

function attachmentFiles({ pairs }: Order, base: string): NamedFile[] {
  return pairs.flatMap(({ prescription }, pair) =>
    (prescription?.attachments ?? []).flatMap(({ type, base64 }, at) => {
      const content = fromBase64(base64);
      const name = `${base}-prescription-${pair + 1}-${at + 1}.${ATTACHMENT_ENDS[type]}`;
      return content === null ? [] : [{ name, content }];
    }),
  );
}

type Money = (minor: number | null) => string;

const moneyOf =
  ({ shop: { currency, currencyDigits, language } }: Catalogue): Money =>
  (minor) =>
    minor === null ? 'none' : formatMoney(minor, currency, currencyDigits, language);

function differencesOf(checked: Verification, money: Money): string[] {
  const { moved, prices, figures, findings, shownTotalMinor, nowTotalMinor } = checked;
  const total =
    shownTotalMinor === nowTotalMinor
      ? []
      : [`Total: shown ${money(shownTotalMinor)}, now ${money(nowTotalMinor)}`];
  return [
    ...prices.map(
      ({ label, shownMinor, nowMinor }) => `${label}: shown ${money(shownMinor)}, now ${money(nowMinor)}`,
    ),
    ...total,
    ...moved.map(
      ({ pair, from, to }) => `Pair ${pair + 1}: the frame ${from} of the order is called ${to} now.`,
    ),
    ...figures.map(
      ({ pair, eye, figure, shown, now }) =>
        `Pair ${pair + 1}, ${eye}, ${figure}: shown ${shown ?? 'none'}, now ${now ?? 'none'}`,
    ),
    ...findings.map(
      ({ pair, change, level, message }) =>
        `Pair ${pair + 1}, ${level} ${change === 'new' ? 'that was not shown' : 'that was shown and is gone'}: ${message}`,
    ),
  ];
}

const REASONS = {
  price: 'The price is not the one that was shown.',
  prescriber: 'The order does not say who prescribed.',
  measured: 'The order does not say who measured.',
  unreadable: 'The shop cannot read this any more.',
} as const;

const callsOf = ({ calls }: Verification): string[] =>
  calls.map(({ pair, reason, message }) => {
    const said = [reason === null ? '' : REASONS[reason], message].filter((text) => text !== '').join(' ');
    return pair === null ? said : `Pair ${pair + 1}: ${said}`;
  });

/** What the owner should know of where the order comes from. */
function provenance(order: Order, { shop }: Catalogue, sealed: boolean, version: string): string[] {
  return [
    ...(order.shop.address === shop.address
      ? []
      : [`It was made for another shop: ${order.shop.name}, ${order.shop.address}.`]),
    ...(sealed ? [] : ['The file was not sealed: whoever saw it could read it.']),
    ...(order.shop.version === version
      ? []
      : ['Frames, lenses or prices of the shop have changed since it was made.']),
    ...consentsOpen(order, shop).map(
      (id) => `The consent "${id}" was not accepted in the words that the shop has now.`,
    ),
  ];
}
