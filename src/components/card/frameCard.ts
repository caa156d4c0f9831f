/**
 * A frame in a list: photograph, or drawing at the list's scale; sizes, mounting, colours, price. A large shop has ten
 * times as many cards as frames; as a component with components in it, each would take longer than all that it says.
 */
import type { Frame, ListedFrame } from '../../catalogue/frame.ts';
import { sizeName } from '../../catalogue/sizeNames.ts';
import type { Field } from '../drawing/field.ts';
import { bridges, lensColour, priceSpan, shownFirst } from '../frameFacts.ts';
import type { ShopWords } from '../shopWords.ts';
import { type CardPhotos, firstPicture } from './cardPhotos.ts';
import { frameDrawing } from './frameDrawing.ts';
import { markup } from './markup.ts';
import { offers } from './offers.ts';
import { swatch } from './swatch.ts';

const note = (text: string) => `<p class="note">${markup(text)}</p>`;

/** The card; `why`: why it stands there. */
export function frameCard(
  words: ShopWords,
  photos: CardPhotos,
  frame: ListedFrame,
  field: Field,
  why?: string,
): string {
  const { t } = words;
  return [
    `<article class="frame-card" data-frame="${frame.id}">`,
    photo(photos, frame, field) ?? `<div class="board">${drawing(words, frame, field)}</div>`,
    `<div class="frame-card-text">${heading(words, frame)}<p>${markup(frame.summary)}</p>${facts(words, frame)}`,
    `<div class="swatches">${frame.colourways.map((one) => swatch(one, `s-${frame.id}-${one.code}`)).join('')}</div>`,
    offers(words, frame),
    why === undefined ? '' : note(why),
    frame.wearer === 'child' ? note(t('card.wearer')) : '',
    frame.sun ? note(t('card.sun')) : '',
    '</div></article>',
  ].join('');
}

/** How wide a card is. */
const SIZES = '(min-width: 44rem) 24rem, 92vw';

/** The frame's photograph, as high as the drawings beside it; null where it has none. */
function photo(photos: CardPhotos, frame: ListedFrame, { spanMm, heightMm }: Field): string | null {
  const picture = firstPicture(frame);
  const made = picture && photos.get(picture.file);
  if (made === undefined) return null;
  const sources = made.sources.map(
    ({ type, srcset }) => `<source type="${type}" srcset="${srcset}" sizes="${SIZES}">`,
  );
  const { src, srcset, width, height } = made;
  return [
    `<div class="board card-photo"><svg class="frame-drawing" viewBox="0 0 ${spanMm} ${heightMm}" aria-hidden="true"></svg>`,
    `<picture>${sources.join('')}<img class="card-photo-img" src="${src}" srcset="${srcset}" sizes="${SIZES}"`,
    ` alt="${markup(picture?.alt ?? '')}" width="${width}" height="${height}" loading="lazy" decoding="async"></picture></div>`,
  ].join('');
}

function drawing({ catalogue, t }: ShopWords, frame: Frame, field: Field): string {
  const { size, colourway } = shownFirst(frame);
  const title = t('drawing.front', { model: frame.model, size: sizeName(size), colourway: colourway.name });
  const colours = { colourway, lensColour: lensColour(frame, catalogue.tints) };
  return frameDrawing({ frame, size, ...colours, uid: `c-${frame.id}`, title, field, again: true });
}

function heading({ href, money, t }: ShopWords, frame: Frame): string {
  const { fromMinor, toMinor } = priceSpan(frame);
  const price = t(fromMinor === toMinor ? 'card.price' : 'card.from', { price: money(fromMinor) });
  return `<h3><a href="${href(`/frames/${frame.id}/`)}">${markup(frame.model)}</a> <span>${markup(price)}</span></h3>`;
}

function facts({ list, t }: ShopWords, frame: Frame): string {
  const told = [
    ['card.sizes', frame.sizes.map(sizeName).join(', ')],
    ['card.mounting', t(`mounting.${frame.mounting.kind}`)],
    ['card.bridge', list(bridges(frame).map((bridge) => t(`bridge.${bridge}`)))],
  ] as const;
  const rows = told.map(
    ([label, text]) => `<div><dt class="label">${markup(t(label))}</dt> <dd>${markup(text)}</dd></div>`,
  );
  return `<dl class="card-facts">${rows.join(' ')}</dl>`;
}
