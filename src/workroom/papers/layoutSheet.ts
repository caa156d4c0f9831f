/** The layout and cutting sheet: both lenses at true scale, and every figure that the bench sets. */

import { holesOf } from '../../quote/lensJob.ts';
import { blankDrawing } from '../drawing/blankDrawing.ts';
import { printedRule } from '../drawing/rule.ts';
import { dioptres, millimetres } from '../figures.ts';
import { type EyeLayout, type LaidPlace, layoutPair, type PairLayout } from '../layout.ts';
import { html, type Markup, type Part } from '../markup.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { edgeRows } from './edgeRows.ts';
import { frameName } from './pairFacts.ts';
import { facts, table } from './parts.ts';
import { axisOf, groundText } from './powers.ts';
import { type Paper, pairId, sheet } from './sheet.ts';

const EYES = ['right', 'left'] as const;

/** The layout sheet of one pair. */
export function layoutSheet(context: PaperContext, pair: PaperPair): Paper {
  const { t, offer } = context;
  const layout = layoutPair(pair.judged, offer.workroom);
  const eyes = EYES.flatMap((eye) => layout[eye] ?? []);
  return sheet(context, {
    id: pairId(context, 'layout', pair.at),
    title: t('layout.title'),
    pair: pair.at,
    named: false,
    body:
      eyes.length === 0
        ? html`<p>${t('noLens')}</p>`
        : html`${drawings(context, pair, eyes)}
${boxing(context, pair, layout)}
${figuresOf(context, pair, layout, eyes)}`,
  });
}

function drawings({ t, offer }: PaperContext, { judged }: PaperPair, eyes: readonly EyeLayout[]): Markup {
  const { segment } = judged.situation.design;
  const marginMm = offer.shop.habits.blankAllowanceMm / 2;
  return html`<div class="blanks">${eyes.map(({ worked }) => {
    const title = t('layout.drawing', { eye: t(`eye.${worked.eye}`) });
    const parts = { segment, holes: holesOf(judged.resolved.frame, worked.eye) };
    const words = { title, nasal: t('layout.nasal'), axis: t('power.axis') };
    return html`<figure>${blankDrawing(worked, parts, marginMm, words)}<figcaption>${title}</figcaption></figure>`;
  })}</div>
<p class="key">${t(segment === null ? 'layout.key' : 'layout.keySegment')}</p>
${printedRule(t('layout.rule'))}`;
}

function boxing(context: PaperContext, pair: PaperPair, layout: PairLayout): Markup {
  const { t } = context;
  const { aMm, bMm, edMm, dblMm, framePdMm, note } = layout;
  const row = (label: string, value: Part) => [t(label), value] as const;
  return html`<div class="strip">${facts([
    row('frame.frame', frameName(context, pair)),
    row(
      'layout.boxing',
      t('layout.boxingOf', {
        a: millimetres(aMm),
        b: millimetres(bMm),
        ed: millimetres(edMm),
        dbl: millimetres(dblMm),
      }),
    ),
    row('layout.framePd', millimetres(framePdMm)),
    row('layout.mounting', t(`mounting.${pair.judged.situation.frame.mounting}`)),
    row('lenses.material', pair.judged.situation.material.name),
    row('layout.pressure', note?.pressure ?? t('layout.noNote')),
    row('layout.polish', note?.polish ?? null),
  ])}</div>`;
}

/** In and up from the boxed centre, in words that leave no sign to misread. */
function offsetText(t: PaperContext['t'], { inMm, upMm }: Pick<LaidPlace, 'inMm' | 'upMm'>): string {
  const along = (mm: number, more: string, less: string) =>
    mm === 0 ? null : `${millimetres(Math.abs(mm))} ${t(mm > 0 ? more : less)}`;
  const parts = [along(inMm, 'base.in', 'base.out'), along(upMm, 'base.up', 'base.down')];
  return parts.filter((one) => one !== null).join(', ') || t('layout.onCentre');
}

function figuresOf(
  context: PaperContext,
  { judged, at }: PaperPair,
  layout: PairLayout,
  eyes: readonly EyeLayout[],
): Markup {
  const { t, job } = context;
  const previous = job.order.pairs[at]?.wornBaseCurveD ?? null;
  const row = (label: string, cell: (eye: EyeLayout) => Part): Part[] => [
    t(label),
    ...eyes.map((eye) => cell(eye)),
  ];
  const height = ({ heightMm, upMm }: LaidPlace) =>
    t('layout.heightOf', {
      height: millimetres(heightMm),
      datum: `${upMm > 0 ? '+' : ''}${millimetres(upMm)}`,
    });
  const some = (test: (eye: EyeLayout) => unknown) => eyes.some((eye) => test(eye) !== null);
  const isRx = judged.situation.design.corridor !== null;
  const rows: (readonly Part[] | false)[] = [
    row('layout.pd', ({ worked }) => millimetres(worked.pdMm)),
    some(({ cross }) => cross) &&
      row('layout.cross', ({ cross }) => cross && html`<b>${offsetText(t, cross)}</b>; ${height(cross)}`),
    row(
      isRx ? 'layout.reference' : 'layout.centre',
      ({ reference }) => html`<b>${offsetText(t, reference)}</b>; ${height(reference)}`,
    ),
    some(({ segment }) => segment) &&
      row(
        'layout.segment',
        ({ segment }) => segment && html`<b>${offsetText(t, segment)}</b>; ${height(segment)}`,
      ),
    row('layout.axis', ({ worked }) => axisOf(worked.ordered.power)),
    row('layout.prism', ({ worked }) => groundText(t, worked)),
    row('layout.blank', ({ worked: { lens } }) =>
      t(lens.blank.spareMm < 0 ? 'layout.blankShort' : 'layout.blankOf', {
        used: millimetres(lens.blank.usedMm),
        needed: millimetres(lens.blank.neededMm),
        spare: millimetres(Math.abs(lens.blank.spareMm)),
        at: lens.blank.closestAtDeg,
      }),
    ),
    row('layout.base', ({ worked }) => dioptres(worked.lens.baseCurveD)),
    previous !== null && [t('layout.previous'), ...eyes.map(() => dioptres(previous))],
    ...edgeRows(context, eyes),
    row('layout.edge', ({ worked: { lens } }) =>
      t('layout.edgeOf', {
        thick: millimetres(lens.thickest.mm),
        thickAt: lens.thickest.atDeg,
        thin: millimetres(lens.thinnest.mm),
        thinAt: lens.thinnest.atDeg,
      }),
    ),
    row('layout.centreThickness', ({ worked: { lens } }) =>
      t('layout.massOf', { mm: millimetres(lens.centreThicknessMm), mass: lens.massG.toFixed(1) }),
    ),
    row('layout.circumference', ({ size }) =>
      t('layout.sizeOf', {
        outline: millimetres(size.outlineCircumferenceMm),
        finished: millimetres(size.circumferenceMm),
        a: millimetres(size.aMm),
        b: millimetres(size.bMm),
      }),
    ),
  ];
  const estimate = eyes.find(({ worked }) => worked.lens.estimate !== null)?.worked.lens.estimate ?? null;
  const notes = [
    estimate !== null && t(`remark.${estimate}`),
    judged.situation.frame.outlineOrigin === 'fitted' && t('remark.outline'),
    layout.right !== null && layout.left !== null ? false : t('noLens'),
  ].filter((one) => one !== false);
  return html`${table(
    ['', ...eyes.map(({ worked }) => t(`eye.${worked.eye}`))],
    rows.filter((one) => one !== false),
    'sides',
  )}
${notes.length > 0 && html`<p class="key">${notes.join(' ')}</p>`}`;
}
