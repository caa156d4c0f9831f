/** The check sheet: an order looked at again before anything is bought for it. */
import { fitting, html, type Markup, shortened } from '../markup.ts';
import { type Verification, verify } from '../verify.ts';
import { callTexts, differenceTexts, heldKey } from './checkWords.ts';
import type { PaperContext } from './context.ts';
import { lines, part, table } from './parts.ts';
import { type Paper, sheet } from './sheet.ts';

/** Rows and lines that fit on the page with everything else. */
const MOST_PRICES = 5;
const DIFFERENCE_LINES = 7;
const CALL_LINES = 9;

/** The check sheet of an order. */
export function checkSheet(context: PaperContext): Paper {
  const { opened, t } = context;
  const found = verify(opened);
  return sheet(context, {
    id: 'check',
    title: t('verify.title'),
    pair: null,
    named: true,
    body: html`${part(t('verify.checklist'), checklist(context, found))}
${part(t('verify.prices'), prices(context, found))}
${part(t('verify.differences'), differences(context, found))}
${part(t('verify.calls'), calls(context, found))}
<p class="sign">${t('verify.sign')}</p>`,
  });
}

function checklist({ t }: PaperContext, { checks }: Verification): Markup {
  return table(
    [t('verify.item'), t('verify.found'), t('verify.seen')],
    checks.map(({ item, holds }) => [
      t(`verify.${item}`),
      holds === false ? html`<b>${t(`verify.${heldKey(holds)}`)}</b>` : t(`verify.${heldKey(holds)}`),
      '',
    ]),
    'fill checks',
  );
}

function prices({ t, money }: PaperContext, found: Verification): Markup {
  const { shownTotalMinor, nowTotalMinor } = found;
  const amount = (minor: number | null) => (minor === null ? '–' : money(minor));
  const total = [t('verify.total'), money(shownTotalMinor), amount(nowTotalMinor)];
  const rows = found.prices
    .slice(0, MOST_PRICES)
    .map(({ label, shownMinor, nowMinor }) => [shortened(label, 55), amount(shownMinor), amount(nowMinor)]);
  const more = found.prices.length - rows.length;
  const said =
    found.prices.length === 0 ? t('verify.samePrice') : more > 0 && t('verify.more', { count: more });
  return html`${table(['', t('verify.shown'), t('verify.now')], [...rows, total], 'money')}${said !== false && html`<p>${said}</p>`}`;
}

function differences({ t }: PaperContext, found: Verification): Markup {
  const { shown, more } = fitting(differenceTexts(t, found), DIFFERENCE_LINES);
  return (
    lines([...shown, ...(more > 0 ? [t('verify.more', { count: more })] : [])]) ??
    html`<p>${t('verify.sameFindings')}</p>`
  );
}

function calls({ t, job }: PaperContext, found: Verification): Markup {
  const { phone, email } = job.order.buyer;
  const to = [phone, email].filter((one) => one !== '').map((one) => shortened(one, 45));
  const { shown, more } = fitting(callTexts(t, found), CALL_LINES);
  const list = lines([...shown, ...(more > 0 ? [t('verify.more', { count: more })] : [])], 'boxes');
  return list === null
    ? html`<p>${t('verify.noCalls')}</p>`
    : html`<p>${t('verify.callAt', { to: to.join(', ') || '–' })}</p>${list}`;
}
