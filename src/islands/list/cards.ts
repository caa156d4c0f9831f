/** The cards that the page was built with: what each says, which are shown, and where they stand. */
import { h, render } from 'preact';
import { cardOf, sharedCautions } from '../../configurator/list/card.ts';
import type { FrameListStores } from '../../configurator/list/frameList.ts';
import type { Finding } from '../../quote/answer.ts';
import type { FrameAnswer } from '../../quote/frameList.ts';
import { inTurn } from '../inTurn.ts';
import { CardAnswer } from './CardAnswer.tsx';

interface OnPage {
  readonly element: HTMLElement;
  /** Where the page was built with it. */
  readonly home: HTMLElement;
  readonly said: HTMLElement;
  /** What it says at present. */
  shown: FrameAnswer | undefined;
}

/** Keeps the cards of the page as the stores have them. */
export function keepCards(stores: FrameListStores, page: ParentNode): void {
  const cards = new Map([...page.querySelectorAll<HTMLElement>('[data-frame]')].map(cardOnPage));
  const flat = page.querySelector<HTMLElement>('#list-sorted');
  const groups = [...page.querySelectorAll<HTMLElement>('[data-collection]')];

  let shared: readonly Finding[] = [];
  const say = () => {
    const answers = stores.answers.get();
    // Known only at the end; until then the cards leave out what was shared before.
    const before = textOf(shared);
    if (stores.progress.get() === 'done') shared = sharedCautions(answers);
    const same = before === textOf(shared);
    for (const [id, card] of cards) {
      const answer = answers.get(id);
      if (card.shown === answer && (same || answer === undefined)) continue;
      card.shown = answer;
      card.said.hidden = answer === undefined;
      render(answer ? h(CardAnswer, { card: cardOf(answer, shared), stores }) : null, card.said);
    }
  };

  const arrange = () => {
    // While frames are still being judged the cards stay where they are: nobody can aim at what moves.
    if (stores.progress.get() === 'judging') return;
    const order = stores.order.get();
    const shown = stores.shown.get();
    const ids = new Set(shown.map(({ id }) => id));
    // Read before anything is changed: else the page would be laid out anew for each card.
    const unseen = [...cards].filter(([id, { element }]) => ids.has(id) && !isSeen(element));
    for (const [id, { element }] of cards) element.hidden = !ids.has(id);
    for (const [, { element }] of unseen) showInTurn(element);
    const inShop = order === 'shop' ? stores.facts : shown;
    const filled = new Map<Element, number>();
    for (const { id } of inShop) {
      const card = cards.get(id);
      const place = order === 'shop' ? card?.home : flat?.querySelector('.frame-list');
      if (!card || !place) continue;
      const at = filled.get(place) ?? 0;
      filled.set(place, at + 1);
      // A card that stands where it belongs is not moved: the browser would lay it out anew.
      const there = place.children[at] ?? null;
      if (there !== card.element) place.insertBefore(card.element, there);
    }
    if (flat === null) return;
    flat.hidden = order === 'shop';
    const title = flat.querySelector('h2');
    if (title !== null && order !== 'shop') title.textContent = stores.told(`sorted.${order}`);
    for (const group of groups)
      group.hidden = order !== 'shop' || group.querySelector('[data-frame]:not([hidden])') === null;
  };

  // A link to a collection leads nowhere while the frames stand in another order.
  for (const link of page.querySelectorAll('.collection-index a'))
    link.addEventListener('click', () => stores.order.set('shop'));
  stores.answers.listen(say);
  stores.progress.listen(say);
  stores.shown.listen(arrange);
  stores.progress.listen(arrange);
}

/** Whether a card was drawn; where a browser cannot tell, it is taken to be. */
const isSeen = (element: HTMLElement) => element.checkVisibility?.({ contentVisibilityAuto: true }) ?? true;

/** A card that was not seen gets its room at once and its drawing in turn: all at once would hold up whoever filters. */
function showInTurn(element: HTMLElement): void {
  element.classList.add('card-later');
  inTurn(() => element.classList.remove('card-later'), 'alone');
}

const textOf = (findings: readonly Finding[]) => findings.map(({ message }) => message).join('\n');

function cardOnPage(element: HTMLElement): [string, OnPage] {
  const said = document.createElement('div');
  said.className = 'card-answer';
  said.hidden = true;
  element.querySelector('.frame-card-text')?.append(said);
  const home = element.parentElement as HTMLElement;
  return [element.dataset['frame'] ?? '', { element, home, said, shown: undefined }];
}
