/** Drawings of bench packages as markup. */
import { h } from 'preact';
import { say } from '../../../src/catalogue/words.ts';
import { Drawings } from '../../../src/islands/drawings/Drawings.tsx';
import { teller, type Words } from '../../../src/islands/drawings/tell.ts';
import { drawingsView } from '../../../src/quote/view/drawings.ts';
import type { Change } from '../../fixtures/bench.ts';
import { words } from '../../fixtures/bench.ts';
import { situationOf } from '../../quote/view/situations.ts';
import { markup } from './markup.ts';

export const t: Words = (key, slots) => say(words, `worksheet.${key}`, slots);
export const tell = teller(t, 'en');

/** All drawings of a changed bench package, over another where one is given. */
export function drawn(change: Change, other: Change | null = null): string {
  const view = drawingsView(situationOf(change), other && situationOf(other));
  return markup(h(Drawings, { view, t, language: 'en', uid: 'd', comparedAs: other && 'Thin plastic' }));
}
