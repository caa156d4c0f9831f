/** The lens record: what the wearer's next examiner wants to know of this pair. */
import { dioptres, millimetres } from '../figures.ts';
import type { MeasuredLens } from '../inspection/measured.ts';
import { html, type Markup, type Part, shortened } from '../markup.ts';
import { workedLens } from '../workedLens.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { both, fitFacts, frameFacts, writtenPrescription } from './pairFacts.ts';
import { facts, part } from './parts.ts';
import { powerRow, powerTable } from './powers.ts';
import { type Paper, pairId, sheet } from './sheet.ts';

const EYES = ['right', 'left'] as const;

/** The lens record of one pair. */
export function lensRecord(context: PaperContext, pair: PaperPair): Paper {
  const { t, offer } = context;
  const written = writtenPrescription(context, pair);
  const { hasPrescription, use } = pair.judged.situation;
  return sheet(context, {
    id: pairId(context, 'record', pair.at),
    title: t('record.title'),
    pair: pair.at,
    named: true,
    foot: `${offer.shop.licence} ${[offer.shop.contact.phone, offer.shop.contact.email].join(', ')}`,
    body: html`<p>${t('record.intro')}</p>
${written !== null && part(t('part.prescription'), html`${written}${prescriber(context, pair)}`)}
${hasPrescription && use !== 'none' && part(t('record.made'), made(context, pair))}
<div class="columns">
${part(t('part.lenses'), lenses(context, pair))}
${part(t('record.thickness'), shape(context, pair))}
</div>
<div class="columns">
${part(t('part.fit'), fitFacts(context, pair))}
${part(t('part.frame'), frameFacts(context, pair))}
</div>
${part(t('record.notes'), html`<p class="key">${t('record.method')}</p>`)}`,
  });
}

function prescriber({ t, job, day }: PaperContext, { judged, at }: PaperPair): Markup | null {
  const paper = job.order.pairs[at]?.prescription ?? null;
  if (paper === null) return null;
  const { name, place } = paper.prescriber;
  const who = [name, place].filter((one) => one !== '').join(', ');
  const { issued } = judged.situation;
  return html`<p>${t('record.prescriber', { who: shortened(who, 70) || t('people.notSaid'), day: issued === null ? t('people.notSaid') : day(issued) })}</p>`;
}

/** Ordered and, where the pair was inspected, measured powers. */
function made({ t }: PaperContext, { judged, inspection }: PaperPair): Markup {
  const rows = EYES.flatMap((eye): Part[][] => {
    const worked = workedLens(judged, eye);
    if (worked === null) return [];
    const label = (key: string) => html`<b>${t(`eye.${eye}`)}</b> ${t(key)}`;
    const ordered = powerRow(
      t,
      label(worked.compensated ? 'record.compensated' : 'record.ordered'),
      eye,
      worked.ordered,
    );
    if (inspection === null) return [ordered];
    const { power, prism, addD }: MeasuredLens = inspection.measured[eye];
    const key = Math.abs(worked.thinning.y) >= 0.005 ? 'record.measuredThinned' : 'record.measured';
    const found = powerRow(t, label(key), eye, {
      power,
      prism: prism ?? { x: 0, y: 0 },
      addD: addD ?? 0,
    });
    return [ordered, prism === undefined ? found.with(4, t('record.notMeasured')) : found];
  });
  return html`${powerTable(t, rows)}${inspection === null && html`<p class="key">${t('record.noMeasured')}</p>`}`;
}

function lenses({ t, offer, options }: PaperContext, { judged, at }: PaperPair): Markup {
  const { design, material, tint, coating, use } = judged.situation;
  const { corridor, segment } = design;
  const markings = options.markings?.[at] ?? null;
  return facts([
    [t('lenses.use'), offer.words[`use.${use}`] ?? use],
    [t('lenses.design'), design.name],
    [
      t('record.corridor'),
      corridor && t('record.corridorOf', { mm: millimetres(corridor.lengthMm), says: corridor.definition }),
    ],
    [t('record.segment'), segment && t('record.segmentOf', { width: millimetres(segment.widthMm) })],
    [t('lenses.material'), material.name],
    [
      t('record.index'),
      `ne ${material.ne.toFixed(3)}, nd ${material.nd.toFixed(3)}, ${t('record.abbe', { abbe: material.abbe })}`,
    ],
    [t('lenses.tint'), tint?.name ?? t('none')],
    [t('lenses.coating'), coating?.name ?? t('none')],
    [t('record.markings'), markings === null ? null : shortened(markings, 80)],
  ]);
}

function shape({ t }: PaperContext, { judged }: PaperPair): Markup {
  const right = workedLens(judged, 'right');
  const left = workedLens(judged, 'left');
  const pair = (value: (lens: NonNullable<typeof right>) => number) =>
    both(right && value(right), left && value(left));
  const base = right && left && `${dioptres(right.lens.baseCurveD)} / ${dioptres(left.lens.baseCurveD)}`;
  const upMm = judged.situation.frame.bMm / 2;
  const thinned = right !== null && Math.abs(right.thinning.y) >= 0.005;
  return facts([
    [t('record.base'), base],
    [t('record.centre'), pair(({ lens }) => lens.centreThicknessMm)],
    [t('record.edge'), pair(({ lens }) => lens.thickest.mm)],
    [t('record.thinning'), thinned && t('order.down', { amount: Math.abs(right.thinning.y).toFixed(2) })],
    [t('record.centred'), pair(({ pdMm }) => pdMm)],
    [
      t('record.height'),
      pair(({ cross, segmentTop, reference }) => (segmentTop ?? cross ?? reference).yMm + upMm),
    ],
    [
      t('record.near'),
      right?.nearPdMm == null || left?.nearPdMm == null ? null : both(right.nearPdMm, left.nearPdMm),
    ],
  ]);
}
