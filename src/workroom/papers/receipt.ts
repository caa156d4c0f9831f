/** The itemised receipt, such as an insurer asks for: goods, what was prescribed apart from extras, tax, paid. */
import type { QuoteLine } from '../../pricing/line.ts';
import { wearers } from '../job.ts';
import { html, type Markup, type Part, shortened } from '../markup.ts';
import {
  groupTotal,
  RECEIPT_GROUPS,
  type ReceiptGroup,
  type ReceiptLine,
  receiptLines,
} from '../receiptLines.ts';
import type { PaperContext } from './context.ts';
import { facts, part, table } from './parts.ts';
import { type Paper, sheet } from './sheet.ts';

/** Lines that fit on the page; those of a longer order are summed by group. */
const MOST_LINES = 20;
/** Up to so many, a label may take two lines. */
const FEW_LINES = 16;

/** The receipt of an order; null where it has no price any more. */
export function receipt(context: PaperContext): Paper | null {
  const { t, job, offer, opened, options } = context;
  const shown = options.price === 'shown';
  const price = shown ? job.order.shown.price : (opened.answer?.price ?? null);
  if (price === null) return null;
  const lines = receiptLines(price.lines as readonly QuoteLine[], opened.pairs, offer.workroom.billing);
  return sheet(context, {
    id: 'receipt',
    title: t('receipt.title'),
    pair: null,
    named: false,
    body: html`<div class="columns">${seller(context)}${buyer(context)}</div>
${goods(context, lines, price.total)}
${summary(context, lines)}
${paid(context, price.total)}
${codes(context, lines)}`,
    foot: offer.shop.licence,
  });
}

function seller({ t, offer }: PaperContext): Markup {
  const { contact } = offer.shop;
  return part(
    t('receipt.seller'),
    html`<p>${contact.lines.map((line) => html`${line}<br>`)}${contact.phone}, ${contact.email}</p>${facts([[t('receipt.taxId'), offer.workroom.taxId]])}`,
  );
}

function buyer({ t, job, opened, day }: PaperContext): Markup {
  const { buyer: who } = job.order;
  const address = [who.name, ...who.lines].slice(0, 7).map((line) => html`${shortened(line, 50)}<br>`);
  const prescribed = opened.pairs.flatMap((judged, at) => {
    if (!judged?.situation.hasPrescription) return [];
    const name = job.order.pairs[at]?.prescription?.prescriber.name ?? '';
    const { issued } = judged.situation;
    return [
      [name || t('people.notSaid'), issued === null ? null : day(issued)]
        .filter((one) => one !== null)
        .join(', '),
    ];
  });
  return part(
    t('receipt.buyer'),
    html`<p>${address}</p>${facts([
      [t('receipt.wearer'), shortened(wearers(job, null).join('; '), 90)],
      [t('receipt.prescribed'), shortened([...new Set(prescribed)].join('; '), 90)],
    ])}`,
  );
}

function goods({ t, money, opened }: PaperContext, lines: readonly ReceiptLine[], total: number): Markup {
  const several = opened.pairs.length > 1;
  const row = ({ pair, label, amount, codes }: ReceiptLine): Part[] => [
    html`${several && pair !== null && `${t('head.only', { pair: pair + 1 })} `}${shortened(label, lines.length > FEW_LINES ? 56 : 110)}`,
    codes.map(({ code, count }) => (count > 1 ? `${code} × ${count}` : code)).join(', '),
    money(amount),
  ];
  const rows = RECEIPT_GROUPS.flatMap((group): Part[][] => {
    const own = lines.filter((line) => line.group === group);
    if (own.length === 0) return [];
    const title = html`<b>${t(`group.${group}`)}</b>`;
    if (lines.length > MOST_LINES) return [[title, '', money(groupTotal(lines, group))]];
    return [[title, '', ''], ...own.map(row)];
  });
  const sum = [html`<b>${t('receipt.total')}</b>`, '', html`<b>${money(total)}</b>`];
  return table([t('receipt.item'), t('receipt.code'), t('receipt.amount')], [...rows, sum], 'money receipt');
}

/** What was prescribed apart from what was chosen besides. */
function summary({ t, money }: PaperContext, lines: readonly ReceiptLine[]): Markup {
  const one = (group: ReceiptGroup) => [t(`sum.${group}`), money(groupTotal(lines, group))] as const;
  return html`<div class="strip">${facts([one('prescribed'), one('frame'), one('extra'), one('credit')])}</div>`;
}

function paid({ t, money, day, options, job }: PaperContext, total: number): Markup {
  const given = options.paid;
  if (given === undefined)
    return html`<p class="key">${t('receipt.unpaid', { how: shortened(job.order.payment?.label ?? t('people.notSaid'), 80) })}</p>`;
  const due = total - given.amountMinor;
  const rest =
    due === 0
      ? t('receipt.settled')
      : t(due > 0 ? 'receipt.due' : 'receipt.over', { amount: money(Math.abs(due)) });
  return html`<p><b>${t('receipt.paid', { amount: money(given.amountMinor), day: day(given.on), how: shortened(given.how, 60) })}</b> ${rest}</p>`;
}

function codes({ t, offer }: PaperContext, lines: readonly ReceiptLine[]): Markup | null {
  const named = new Map(
    lines.flatMap(({ codes: own }) => own.map(({ code, label }) => [code, label] as const)),
  );
  if (named.size === 0) return null;
  const told = [...named].map(([code, label]) => `${code} ${label}`).join('; ');
  return html`<p class="key">${t('receipt.codes', { codes: told })} ${offer.workroom.billingNote}</p>`;
}
