/** The frame of every paper: head with the shop and the job, a body, a foot. One article prints to one page. */

import { shownNumber, wearers } from '../job.ts';
import { html, type Markup, shortened } from '../markup.ts';
import type { PaperContext } from './context.ts';

export interface Paper {
  /** Unique in a job, such as `layout-1`. */
  readonly id: string;
  readonly title: string;
  /** An `article` element; all that is not ours in it is escaped text. */
  readonly html: string;
}

export interface SheetParts {
  readonly id: string;
  readonly title: string;
  /** Index of the pair; null: the whole order. */
  readonly pair: number | null;
  /** Whether the wearer's name stands in the head. */
  readonly named: boolean;
  readonly body: Markup;
  /** What stands in the corner of the head. */
  readonly corner?: Markup;
  readonly foot?: string;
}

/** A paper of its parts. */
export function sheet(context: PaperContext, parts: SheetParts): Paper {
  const { job, offer, opened, t, day } = context;
  const { id, title, pair, named, body, corner = null, foot } = parts;
  const count = opened.pairs.length;
  const article = html`<article class="paper" data-paper="${id}" lang="${offer.shop.language}">
<header><div class="head"><p class="shop">${offer.shop.name}</p><h1>${title}</h1>
<p class="job"><b>${shownNumber(job)}</b>${pair !== null && count > 1 && html` <span>${t('head.pair', { pair: pair + 1, count })}</span>`} <span>${t('head.ordered', { day: day(job.date) })}</span>${named && html` <span>${t('head.wearer')} <b>${shortened(wearers(job, pair).join(', '), 60)}</b></span>`}</p></div>${corner}</header>
${body}
<footer>${foot ?? t('foot.bench')}</footer>
</article>`;
  return { id, title, html: article.markup };
}

/** A name for a part of the order's papers that each pair has: `layout`, or `layout-2` where there are several. */
export const pairId = ({ opened }: PaperContext, name: string, at: number): string =>
  opened.pairs.length > 1 ? `${name}-${at + 1}` : name;
