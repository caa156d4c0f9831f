/** The parcel slip: what is in the box and where it goes. It says nothing of anybody's eyes. */
import { html, type Markup, type Part, shortened } from '../markup.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { frameName } from './pairFacts.ts';
import { facts, lines, part } from './parts.ts';
import { type Paper, sheet } from './sheet.ts';

/** The slip of an order. */
export function parcelSlip(context: PaperContext): Paper {
  const { t, job, offer, options, pairs, day } = context;
  const { buyer } = job.order;
  const { parcel } = options;
  const most = 6;
  const box = pairs.slice(0, most).map((pair) => contents(context, pair));
  return sheet(context, {
    id: 'slip',
    title: t('slip.title'),
    pair: null,
    named: false,
    foot: t('slip.foot', {
      shop: offer.shop.name,
      email: offer.shop.contact.email,
      phone: offer.shop.contact.phone,
    }),
    body: html`<address class="to">${[buyer.name, ...buyer.lines].slice(0, 7).map((line) => html`${shortened(line, 42)}<br>`)}</address>
<address class="from">${t('slip.from')}<br>${offer.shop.contact.lines.map((line) => html`${line}<br>`)}</address>
${
  parcel !== undefined &&
  facts([
    [t('slip.sent'), day(parcel.on)],
    [t('slip.carrier'), shortened(parcel.carrier, 60)],
    [t('slip.number'), shortened(parcel.number, 40)],
  ])
}
${part(t('slip.contents'), html`${lines(box, 'boxes')}${pairs.length > most && html`<p>${t('slip.more', { count: pairs.length - most })}</p>`}`)}
${part(
  t('slip.papers'),
  lines(
    ['record', 'care', 'receipt'].map((paper) => t(`slip.${paper}`)),
    'boxes',
  ),
)}
${part(t('slip.return'), html`<p>${t('slip.returnSays')}</p>`)}`,
  });
}

function contents(context: PaperContext, pair: PaperPair): Markup {
  const { t } = context;
  const shop = pair.judged.resolved.shopFrame;
  const goods: Part = shop === null ? t('slip.ownFrame') : shortened(shop.frame.inTheBox.join(', '), 120);
  return html`<b>${frameName(context, pair)}</b>, ${t('slip.glazed')}. ${goods}`;
}
