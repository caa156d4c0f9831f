/** What papers are put together from: facts, tables, titled parts, lists. */
import type { Slots } from '../../catalogue/words.ts';
import { html, type Markup, type Part } from '../markup.ts';

/** The sentence of a key below `workroom` in the shop's words. */
export type Say = (key: string, slots?: Slots) => string;

/** A list of facts, label and value; a value of null leaves its row out. */
export function facts(rows: readonly (readonly [label: string, value: Part])[]): Markup {
  const shown = rows.filter(([, value]) => value !== null && value !== false && value !== '');
  return html`<dl>${shown.map(([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl>`;
}

/** A table; the first cell of each row is its head. Cells of figures stand below each other. */
export function table(heads: readonly Part[], rows: readonly (readonly Part[])[], name = 'figures'): Markup {
  return html`<table class="${name}"><thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows.map(
    ([head, ...cells]) =>
      html`<tr><th scope="row">${head ?? null}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`,
  )}</tbody></table>`;
}

/** A titled part of a sheet. */
export const part = (title: string, body: Part, name = ''): Markup =>
  html`<section class="${name}"><h2>${title}</h2>${body}</section>`;

/** A list of sentences; nothing where there is none. */
export const lines = (items: readonly Part[], name = ''): Markup | null =>
  items.length === 0 ? null : html`<ul class="${name}">${items.map((item) => html`<li>${item}</li>`)}</ul>`;
