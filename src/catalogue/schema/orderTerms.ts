/** The fields below `order` in content/shop.yaml. */
import * as z from 'zod/mini';
import { isPublicKey } from '../keyText.ts';
import { DELIVERIES, type OrderTerms } from '../orderTerms.ts';
import { about } from './about.ts';
import { fields, id, list, oneOf, orElse, orNull, refuse, text, textLike } from './fields.ts';

/** Text whose braces hold the order's number or total. */
const SLOTTED = /^(?:[^{}]|\{(?:number|total)\})*$/;
const LINK = /^https:\/\/[^\s/?#{}]+(?:[/?#](?:[^\s{}]|\{(?:number|total)\})*)?$/;
const ADDRESS = /^https:\/\/[^\s/?#]+(?:\/[^\s#]*)?$/;
const KEY = 'an age public key, age1 and 58 letters and digits (npm run keys makes one)';

function publicKey() {
  const key = z.string({ error: KEY }).check(z.regex(/^age1/, { error: KEY }));
  return z.pipe(
    key,
    z.transform((value, context) => {
      if (!isPublicKey(value))
        refuse(context, value, {
          code: 'wrong-value',
          expected: KEY,
          hint: 'Copy the key again: a letter of it is wrong, missing or too many.',
        });
      return value;
    }),
  );
}

function payment() {
  const words = 'a text that may hold {number} and {total}, and no other braces';
  return fields({
    id: about('What an order file names it by.', id(), 'invoice'),
    label: about('What the choice is called.', text()),
    words: about('What the buyer is told; `{number}` and `{total}` are filled in.', textLike(SLOTTED, words)),
    link: about(
      "Address of the shop's own payment page; `{number}` and `{total}` are filled in.",
      orNull(textLike(LINK, 'an address such as "https://pay.example/?for={number}&amount={total}"')),
    ),
  });
}

const ABSENT: OrderTerms = {
  publicKeys: [],
  delivery: ['save', 'mail'],
  postTo: null,
  consents: [],
  payments: [],
};

/** How orders come in; without it, files are saved or mailed, and not sealed. */
export function orderTerms() {
  const terms = fields({
    publicKeys: about(
      "Public halves of the workroom's keys; `npm run keys` writes them. Default none: files are not sealed.",
      orElse(list(publicKey()), []),
    ),
    delivery: about(
      "Ways to send the order's file, the first choice first. Default save and mail.",
      orElse(list(oneOf(DELIVERIES), 1), [...ABSENT.delivery]),
    ),
    postTo: about(
      'Address that `post` sends to.',
      orNull(textLike(ADDRESS, 'an address such as https://orders.example/in')),
    ),
    consents: about(
      'Sentences that the buyer accepts, word for word.',
      orElse(
        list(
          fields({
            id: about('What an order file names it by.', id(), 'cautions'),
            text: about('What the buyer accepts.', text()),
          }),
        ),
        [],
      ),
    ),
    payments: about("Ways to pay, in the shop's own words.", orElse(list(payment()), [])),
  });
  return orElse(terms, ABSENT as z.infer<typeof terms>);
}
