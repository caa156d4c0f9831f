/** The mail that asks the buyer to attach the saved file: a mail link cannot attach it by itself. */
import type { Words } from '../catalogue/catalogue.ts';
import type { Shop } from '../catalogue/shop.ts';
import { say } from '../catalogue/words.ts';
import { orderFileName } from './makeOrder.ts';
import { showNumber } from './number.ts';

/** Address of a mail link to the shop; nothing of the prescription or the buyer is in it. */
export function mailLink(
  { shop, words }: { readonly shop: Pick<Shop, 'name' | 'contact'>; readonly words: Words },
  number: string,
  sealed: boolean,
): string {
  const slots = { number: showNumber(number), file: orderFileName(number, sealed), shop: shop.name };
  const part = (key: string) => encodeURIComponent(say(words, key, slots));
  // RFC 6068: line ends of the body are CR LF.
  const body = part('order.mail.body').replaceAll('%0A', '%0D%0A');
  return `mailto:${encodeURIComponent(shop.contact.email)}?subject=${part('order.mail.subject')}&body=${body}`;
}
