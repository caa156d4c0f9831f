/** What the buttons on the ticket do. Each returns what is told below them. */
import type { ComponentChildren } from 'preact';
import { BASKET, MOST_PAIRS, NO_BASKET, put, replace } from '../../configurator/basket/basket.ts';
import { hold, look } from '../../configurator/keeping/holding.ts';
import { type HeldPair, holdPair, termsPart } from '../../configurator/keeping/parts.ts';
import { ASIDE, MOST_ASIDE, setAside } from '../../configurator/keeping/setAside.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { PutTold } from '../basket/PutTold.tsx';
import { shelves } from '../deviceShelf.ts';
import { countHeld, damagedThings, dropThing } from './held.ts';
import { openedPair } from './heldState.ts';
import { openLink } from './LinkDialog.tsx';
import { openComparison } from './openComparison.tsx';
import { telling } from './pageTelling.ts';

type Act = (sheet: Worksheet) => Promise<ComponentChildren>;

const pairOf = (sheet: Worksheet): HeldPair =>
  holdPair(sheet.frame.id, sheet.entries.get(), sheet.read.get().choices);

const putPair: Act = async (sheet) => {
  const words = await telling(sheet);
  const { value, onDevice } = look(shelves(), BASKET);
  const next = put(value ?? NO_BASKET, pairOf(sheet), termsPart(sheet.entries.get()));
  if (next === null) return words.say('basket.full', { most: MOST_PAIRS });
  const done = hold(shelves(), BASKET, next, onDevice);
  countHeld();
  if (!done) return words.say('basket.refused');
  const first = words.say('basket.put', { number: next.pairs.length });
  return <PutTold telling={words} first={first} />;
};

const putBack: Act = async (sheet) => {
  const words = await telling(sheet);
  const opened = openedPair.get();
  const { value, onDevice } = look(shelves(), BASKET);
  if (opened === null || !value?.pairs.some(({ id }) => id === opened.id)) {
    openedPair.set(null);
    return words.say('opened.gone');
  }
  const next = replace(value, opened.id, pairOf(sheet), termsPart(sheet.entries.get()));
  if (!hold(shelves(), BASKET, next, onDevice)) return words.say('basket.refused');
  countHeld();
  const first = words.say('basket.putBack', { number: opened.number });
  return <PutTold telling={words} first={first} />;
};

const putAside: Act = async (sheet) => {
  const words = await telling(sheet);
  const { value } = look(shelves(), ASIDE);
  const set = setAside(value ?? [], pairOf(sheet));
  const most = { most: MOST_ASIDE };
  if (!set.ok) return words.say(`aside.${set.why}`, most);
  if (!hold(shelves(), ASIDE, set.pairs, sheet.kept.get())) return words.say('aside.refused');
  countHeld();
  return words.say('aside.done', { count: set.pairs.length, ...most });
};

const compare: Act = async (sheet) => {
  openComparison(sheet, await telling(sheet));
  return null;
};

const link: Act = async (sheet) => {
  openLink(await telling(sheet), pairOf(sheet));
  return null;
};

/** Counts what is held; removes what can no longer be read, and says so. */
const count: Act = async (sheet) => {
  countHeld();
  if (damagedThings().length === 0) return null;
  const words = await telling(sheet);
  return damagedThings()
    .filter((name) => dropThing(name))
    .map((name) => words.say(`damaged.${name}`))
    .join(' ');
};

export const acts = { put: putPair, putBack, setAside: putAside, compare, link, count } as const;
