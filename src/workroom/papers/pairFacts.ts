/** Facts of a pair that several papers tell: its frame, its lenses, how it was measured, the prescription as written. */

import type { Words } from '../../catalogue/catalogue.ts';
import { sizeName } from '../../catalogue/sizeNames.ts';
import { say } from '../../catalogue/words.ts';
import type { Eye } from '../../optics/types.ts';
import { readEye } from '../../quote/prescribed.ts';
import { dioptres, millimetres, powerCells } from '../figures.ts';
import type { JobPair } from '../job.ts';
import { html, type Markup, type Part, shortened } from '../markup.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { facts } from './parts.ts';
import { powerTable, prismText } from './powers.ts';

/** Model, colourway and size; the shopper's own frame by its measurements. */
export function frameName({ t }: PaperContext, { judged }: PaperPair): string {
  const shop = judged.resolved.shopFrame;
  if (shop === null) return t('frame.own');
  return `${shop.frame.model}, ${shop.colourway.name}, ${sizeName(shop.size)}`;
}

/** Frame by its name and boxing, mm; `whole` tells what it comes fitted with, too. */
export function frameFacts(context: PaperContext, pair: PaperPair, whole = true): Markup {
  const { t } = context;
  const { frame } = pair.judged.situation;
  const shop = pair.judged.resolved.shopFrame;
  return facts([
    [t('frame.frame'), html`<b>${frameName(context, pair)}</b>`],
    [t('frame.mounting'), t(`mounting.${frame.mounting}`)],
    [t('frame.box'), `${millimetres(frame.aMm)} × ${millimetres(frame.bMm)}, ${millimetres(frame.dblMm)}`],
    [t('frame.outline'), t(`outline.${frame.outlineOrigin}`)],
    [t('frame.fitted'), whole && (shop?.frame.comesFitted ?? null)],
  ]);
}

/** Use, design, material, tint and coating by their names. */
export function lensFacts({ t, offer }: PaperContext, { judged }: PaperPair): Markup {
  const { design, material, tint, coating, use, stock } = judged.situation;
  return facts([
    [t('lenses.use'), offer.words[`use.${use}`] ?? use],
    [t('lenses.design'), html`<b>${design.name}</b>`],
    [
      t('lenses.material'),
      html`<b>${material.name}</b>, ${t('lenses.index', { ne: material.ne.toFixed(3) })}`,
    ],
    [t('lenses.tint'), tint?.name ?? t('none')],
    [t('lenses.coating'), coating?.name ?? t('none')],
    [t('lenses.blank'), stock === null ? t('blank.surfaced') : t('blank.stock', { id: stock.id })],
  ]);
}

/** The prescription as it was written, a row an eye; null where there is none. */
export function writtenPrescription({ t }: PaperContext, { judged }: PaperPair): Markup | null {
  const { prescription } = judged.resolved.request;
  if (prescription === null) return null;
  const row = (eye: Eye): Part[] => {
    const asked = prescription[eye];
    if (asked.balance) return [t(`eye.${eye}`), t('power.balance'), '', '', '', ''];
    const { sphereD, cylinderD, axisDeg, addD, prism } = readEye(eye, asked);
    const signed = { sphereD: sphereD ?? 0, cylinderD, axisDeg };
    const plus = cylinderD > 0;
    const [sphere, cylinder, axis] = plus
      ? [dioptres(signed.sphereD), dioptres(cylinderD), String(Math.round(axisDeg)).padStart(3, '0')]
      : powerCells(signed);
    return [
      t(`eye.${eye}`),
      sphereD === null ? '–' : sphere,
      cylinder || t('power.sphere'),
      axis || '–',
      prismText(t, eye, prism),
      addD === null ? '–' : dioptres(addD),
    ];
  };
  return powerTable(t, [row('right'), row('left')]);
}

/** Both eyes' figures side by side, right first. */
export const both = (right: number | null | undefined, left: number | null | undefined): string | null =>
  right === undefined || right === null || left === undefined || left === null
    ? null
    : `${millimetres(right)} / ${millimetres(left)}`;

/** What was measured on the wearer, mm and degrees; what was not measured is left out. */
export function fitFacts({ t, job, offer }: PaperContext, { judged, at }: PaperPair): Markup {
  const { situation, resolved } = judged;
  const { fit, prescription } = resolved.request;
  const { right, left } = situation;
  const degrees = (value: number) => `${millimetres(value)}°`;
  return facts([
    [t('fit.pd'), both(right.pdMm, left.pdMm)],
    [t('fit.nearPd'), nearPd(fit?.nearPd)],
    [t('fit.height'), both(right.fittingHeightMm, left.fittingHeightMm)],
    [t('fit.segment'), both(right.segmentHeightMm, left.segmentHeightMm)],
    [t('fit.tested'), prescription?.vertexDistance == null ? null : millimetres(prescription.vertexDistance)],
    [t('fit.worn'), fit?.vertexDistance === undefined ? null : millimetres(fit.vertexDistance)],
    [
      t('fit.tilt'),
      fit?.pantoscopicTilt === undefined
        ? t('fit.assumed', { figure: degrees(situation.tiltDeg) })
        : degrees(situation.tiltDeg),
    ],
    [t('fit.faceForm'), degrees(situation.frame.faceFormDeg)],
    [t('fit.by'), measurer(offer.words, job.order.pairs[at])],
  ]);
}

/** Who measured, and how; the words of the order file. */
function measurer(words: Words, pair: JobPair | undefined): string | null {
  if (pair === undefined) return null;
  const by = say(words, `order.measuredBy.${pair.measuredBy}`);
  return pair.measuredNote === '' ? by : `${by}; ${shortened(pair.measuredNote, 55)}`;
}

function nearPd(asked: number | { readonly right: number; readonly left: number } | undefined) {
  if (asked === undefined) return null;
  return typeof asked === 'number' ? millimetres(asked) : both(asked.right, asked.left);
}
