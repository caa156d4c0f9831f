/** Care and adaptation notes, by what is in the box. */

import { wearers } from '../job.ts';
import { html, type Part, shortened } from '../markup.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { part } from './parts.ts';
import { type Paper, sheet } from './sheet.ts';

/** A note: a key of the words `workroom.care`, and whether the box calls for it. */
const NOTES: readonly (readonly [key: string, wanted: (pair: PaperPair) => boolean])[] = [
  ['fit', () => true],
  ['progressive', ({ judged }) => judged.situation.design.kind === 'progressive'],
  ['office', ({ judged }) => judged.situation.design.kind === 'office'],
  ['bifocal', ({ judged }) => judged.situation.design.segment !== null],
  ['change', ({ judged }) => judged.situation.hasPrescription && judged.situation.use !== 'none'],
  ['photochromic', ({ judged }) => judged.situation.tint?.kind === 'photochromic'],
  ['polarised', ({ judged }) => judged.situation.tint?.polarised ?? false],
  ['sun', ({ judged }) => isSun(judged)],
  ['clean', () => true],
  ['coating', ({ judged }) => (judged.situation.coating?.faces ?? 'none') !== 'none'],
  ['heat', () => true],
  ['rimless', ({ judged }) => judged.situation.frame.mounting === 'drilled'],
  ['grooved', ({ judged }) => judged.situation.frame.mounting === 'grooved'],
  ['child', ({ judged }) => judged.situation.wearer === 'child'],
  ['one-eyed', ({ judged }) => judged.situation.wearer === 'one-eyed'],
  ['dress', () => true],
  ['call', () => true],
];

/** Darkest declared state below 43 %: a sun tint of category 2 or darker (BS EN ISO 12312-1:2013); photochromic lenses have a note of their own. */
function isSun({ situation }: PaperPair['judged']): boolean {
  const { tint } = situation;
  if (tint === null || tint.kind === 'photochromic') return false;
  return Math.min(1, ...tint.states.map(({ transmittance }) => transmittance)) < 0.43;
}

/** The notes of an order: each once, however many pairs call for it. */
export function careNotes(context: PaperContext): Paper {
  const { t, pairs, job, offer } = context;
  const notes = NOTES.filter(([, wanted]) => pairs.some(wanted));
  return sheet(context, {
    id: 'care',
    title: t('care.title'),
    pair: null,
    named: false,
    foot: `${offer.shop.name}, ${offer.shop.contact.phone}, ${offer.shop.contact.email}`,
    body: html`<p>${t('care.intro', { wearers: shortened(wearers(job, null).join(', '), 80) })}</p>
<div class="notes-columns">${notes.map(
      ([key]): Part => part(t(`care.${key}.title`), html`<p>${t(`care.${key}.text`)}</p>`),
    )}</div>`,
  });
}
