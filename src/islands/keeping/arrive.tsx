/**
 * A worksheet opened with a pair: from a link, or one that is held in this browser, by its number in the fragment.
 * Fills the worksheet and says what it did.
 */
import { BASKET } from '../../configurator/basket/basket.ts';
import type { Entries } from '../../configurator/fields.ts';
import { look } from '../../configurator/keeping/holding.ts';
import { isLink, readLink } from '../../configurator/keeping/link.ts';
import { type NotHad, onlyOffered } from '../../configurator/keeping/offered.ts';
import { type HeldPair, privatePart, termsPart } from '../../configurator/keeping/parts.ts';
import { ASIDE } from '../../configurator/keeping/setAside.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { carryPackage } from '../carryFragment.ts';
import { shelves } from '../deviceShelf.ts';
import { openDialog } from './Dialog.tsx';
import { openedPair } from './heldState.ts';
import { type Arrival, Opened } from './Opened.tsx';
import { telling } from './pageTelling.ts';

/**
 * Fills the worksheet from the fragment of the address; nothing happens where it says nothing of a pair. `changed`:
 * the page stood open already when the fragment came.
 */
export async function arrive(sheet: Worksheet, changed: boolean): Promise<void> {
  const wasKept = sheet.kept.get();
  const arrival = fill(sheet, location.hash, !changed && cameFromHere());
  if (arrival === null) return;
  carryPackage(sheet);
  document.getElementById('worksheet')?.scrollIntoView();
  const words = await telling(sheet);
  document.querySelector<HTMLDialogElement>('dialog.sh-opened')?.close();
  openDialog(
    { class: 'sh-opened', heading: 'sh-opened', modal: false },
    (close) => (
      <Opened
        telling={words}
        arrival={arrival}
        wasKept={wasKept}
        filled={sheet.entries.get()}
        close={close}
      />
    ),
    document.getElementById('worksheet-root'),
  );
}

/** Whether the page before was another of the shop's, and not one that only sends on to this. */
function cameFromHere(): boolean {
  if (document.referrer === '') return false;
  const { origin, pathname } = new URL(document.referrer);
  const names = pathname.split('/');
  return origin === location.origin && !formerIds().some((id) => names.includes(id));
}

function formerIds(): readonly string[] {
  const former = document.getElementById('worksheet-root')?.dataset['former'] ?? '';
  return former.split(' ').filter((id) => id !== '');
}

function fill(sheet: Worksheet, fragment: string, carried: boolean): Arrival | null {
  if (isLink(fragment)) return fillFromLink(sheet, fragment, carried);
  const [, kind, number = ''] = /^#(pair|aside)-(\d{1,9})$/.exec(fragment) ?? [];
  if (kind === undefined) return null;
  const [pairs, terms] = kind === 'pair' ? basketPairs() : [look(shelves(), ASIDE).value ?? [], {}];
  const at =
    kind === 'pair' ? pairs.findIndex((one) => 'id' in one && one.id === Number(number)) : Number(number) - 1;
  const held = pairs[at];
  if (held === undefined || !isOfPage(held, sheet)) return { kind: 'gone' };
  const notHad = putOn(sheet, held, terms);
  if (kind === 'aside') return null;
  openedPair.set({ id: Number(number), number: at + 1 });
  return { kind: 'pair', number: at + 1, notHad };
}

/** Whether a pair is of this page's frame, by the id that it has or had before. */
const isOfPage = ({ frame }: HeldPair, sheet: Worksheet): boolean =>
  frame === sheet.frame.id || formerIds().includes(frame);

function basketPairs(): [readonly HeldPair[], Entries] {
  const basket = look(shelves(), BASKET).value;
  return [basket?.pairs ?? [], basket?.terms ?? {}];
}

/** Puts a held pair on the worksheet in the place of what stands there; what is kept on the device is left alone. */
export function putOn(sheet: Worksheet, held: HeldPair, terms: Entries): readonly NotHad[] {
  const { entries, notHad } = onlyOffered(held.entries, sheet.frame, sheet.data);
  sheet.kept.set(false);
  sheet.fill({ ...termsPart(sheet.entries.get()), ...terms, ...entries });
  return notHad;
}

function fillFromLink(sheet: Worksheet, fragment: string, carried: boolean): Arrival | null {
  const link = readLink(fragment);
  if (link === null || !link.ok) return link && { kind: 'link', link, carried, notHad: [] };
  const { entries, notHad } = onlyOffered(link.entries, sheet.frame, sheet.data);
  const before = sheet.entries.get();
  sheet.kept.set(false);
  // One person's figures are never mixed with another's.
  const rest = link.personal ? {} : privatePart(before);
  sheet.fill({ ...termsPart(before), ...rest, ...entries });
  // A prescription is not left standing in the address.
  if (link.personal) history.replaceState(history.state, '', location.pathname + location.search);
  return { kind: 'link', link: { ...link, entries }, carried, notHad };
}
