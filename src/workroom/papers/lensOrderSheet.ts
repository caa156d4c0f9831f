/** The lens order: what the supplier is asked for, lens by lens, with the same as text records. */
import type { Eye } from '../../optics/types.ts';
import { dioptres, millimetres } from '../figures.ts';
import { type LensOrderEye, lensOrder } from '../lensOrder.ts';
import { html, type Markup, type Part, shortened } from '../markup.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { frameName, lensFacts } from './pairFacts.ts';
import { facts, lines, part, table } from './parts.ts';
import { groundText, powerRow, powerTable } from './powers.ts';
import { type Paper, pairId, sheet } from './sheet.ts';

const EYES = ['right', 'left'] as const;

/** The lens order of one pair. The supplier learns no name. */
export function lensOrderSheet(context: PaperContext, pair: PaperPair): Paper {
  const { t, offer, options } = context;
  const order = lensOrder(pair.judged, offer);
  const eyes = EYES.flatMap((eye) => order[eye] ?? []);
  const remark = options.supplierRemark?.[pair.at] ?? null;
  return sheet(context, {
    id: pairId(context, 'lens-order', pair.at),
    title: t('order.title'),
    pair: pair.at,
    named: false,
    foot: t('order.foot'),
    body: html`<div class="columns">
${part(t('order.from'), html`<p>${offer.shop.contact.lines.map((line) => html`${line}<br>`)}${offer.shop.contact.phone}, ${offer.shop.contact.email}</p>`)}
${part(t('part.lenses'), lensFacts(context, pair))}
</div>
${eyes.length === 0 ? html`<p>${t('noLens')}</p>` : asked(context, pair, eyes)}
${part(t('order.frame'), frame(context, pair))}
${part(
  t('order.remarks'),
  lines([
    ...order.remarks.map((key) => t(`remark.${key}`)),
    ...(remark === null ? [] : [shortened(remark.replace(/\s+/g, ' '), 220)]),
  ]) ?? html`<p>${t('none')}</p>`,
)}
<p class="sign">${t('order.sign')}</p>`,
  });
}

function asked({ t }: PaperContext, { judged }: PaperPair, eyes: readonly LensOrderEye[]): Markup {
  const heads = ['', ...eyes.map(({ eye }) => t(`eye.${eye}`))];
  const row = (label: string, cell: (eye: LensOrderEye) => Part): Part[] => [
    t(label),
    ...eyes.map((eye) => cell(eye)),
  ];
  const compensated = eyes.some(({ worked }) => worked.compensated);
  const thinned = eyes.some(({ worked }) => Math.abs(worked.thinning.y) >= 0.005);
  const near = eyes.some(({ worked }) => worked.nearPdMm !== null);
  const rows: (Part[] | false)[] = [
    row('order.diameter', ({ diameterMm, leastDiameterMm }) =>
      t('order.diameterOf', { used: millimetres(diameterMm), least: millimetres(leastDiameterMm) }),
    ),
    row('order.base', ({ baseCurveD, baseCurveReadingD }) =>
      t('order.baseOf', { base: dioptres(baseCurveD), reading: dioptres(baseCurveReadingD) }),
    ),
    row('order.thickness', ({ centreThicknessMm }) => `${millimetres(centreThicknessMm)} mm`),
    row('order.limits', ({ leastCentreMm, leastEdgeMm }) =>
      t('order.limitsOf', { centre: millimetres(leastCentreMm), edge: millimetres(leastEdgeMm) }),
    ),
    thinned &&
      row('order.thinning', ({ worked }) =>
        t('order.down', { amount: Math.abs(worked.thinning.y).toFixed(2) }),
      ),
    row('order.ground', ({ worked }) => groundText(t, worked)),
    row('order.centre', ({ worked, middle }) => {
      const offset = {
        x: millimetres(worked.reference.xMm - sign(worked.eye) * middle.inMm),
        y: millimetres(worked.reference.yMm - middle.upMm),
      };
      return t('order.centreOf', offset);
    }),
    row('order.pd', ({ worked }) => `${millimetres(worked.pdMm)} mm`),
    near &&
      row('order.nearPd', ({ worked }) =>
        worked.nearPdMm === null ? '–' : `${millimetres(worked.nearPdMm)} mm`,
      ),
    row(
      heightOf(eyes),
      ({ worked }) =>
        `${millimetres((worked.segmentTop ?? worked.cross ?? worked.reference).yMm + judged.situation.frame.bMm / 2)} mm`,
    ),
  ];
  const powers = eyes.flatMap(({ worked, eye }) => [
    powerRow(
      t,
      html`<b>${t(`eye.${eye}`)}</b> ${t(compensated ? 'order.compensated' : 'order.asPrescribed')}`,
      eye,
      worked.ordered,
    ),
    ...(compensated ? [powerRow(t, t('order.prescribed'), eye, worked.prescribed)] : []),
  ]);
  return html`${part(t('order.powers'), powerTable(t, powers))}
${part(
  t('order.each'),
  table(
    heads,
    rows.filter((one) => one !== false),
    'sides',
  ),
)}`;
}

/** Which height is told: of the segment, the fitting cross or the optical centre. */
function heightOf([first]: readonly LensOrderEye[]): string {
  if (first?.worked.segmentTop) return 'order.heightSegment';
  return first?.worked.cross ? 'order.heightCross' : 'order.heightCentre';
}

const sign = (eye: Eye) => (eye === 'right' ? 1 : -1);

function frame(context: PaperContext, pair: PaperPair): Markup {
  const { t } = context;
  const { frame: measures, tiltDeg } = pair.judged.situation;
  const wornMm = pair.judged.resolved.request.fit?.vertexDistance ?? null;
  const shown = facts([
    [t('frame.frame'), frameName(context, pair)],
    [t('frame.mounting'), t(`mounting.${measures.mounting}`)],
    [
      t('frame.box'),
      `${millimetres(measures.aMm)} × ${millimetres(measures.bMm)}, ${millimetres(measures.dblMm)}`,
    ],
    [t('frame.curve'), measures.frameCurveD === null ? t('unknown') : dioptres(measures.frameCurveD)],
    [t('fit.faceForm'), `${millimetres(measures.faceFormDeg)}°`],
    [t('fit.tilt'), `${millimetres(tiltDeg)}°`],
    [t('fit.worn'), wornMm === null ? t('unknown') : `${millimetres(wornMm)} mm`],
  ]);
  return html`<div class="strip">${shown}</div>`;
}
