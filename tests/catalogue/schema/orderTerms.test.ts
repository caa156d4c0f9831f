import { describe, expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

/** The faultless shop with these lines below `order`. */
const terms = (...lines: string[]) =>
  printedAfter(
    'shop.yaml',
    'collections:',
    ['order:', ...lines.map((line) => `  ${line}`), 'collections:'].join('\n'),
  );

const KEY = 'age1ql3z7hjy54pw3hyww5ayyfg7zqgvc7w3j2elw8zmrj2kg5sfn9aqmcac8p';

describe('how orders come in', () => {
  it('is as the shop says', () => {
    expect(
      terms(
        `publicKeys: [${KEY}]`,
        'delivery: [post, save]',
        'postTo: https://orders.quay.example/in',
        'consents: [{ id: cautions, text: I have read them. }]',
        'payments: [{ id: card, label: Card, words: "Pay {total}.", link: "https://pay.example/?for={number}" }]',
      ),
    ).toBe('no fault');
  });

  it('is told when a letter of a public key is wrong', () => {
    expect(terms(`publicKeys: [${KEY.replace('54pw', '45pw')}]`)).toMatchInlineSnapshot(`
      "
      content/shop.yaml:34:16 order.publicKeys.0: this value is not possible [wrong-value]
        34 |   publicKeys: [age1ql3z7hjy45pw3hyww5ayyfg7zqgvc7w3j2elw8zmrj2kg5sfn9aqmcac8p]
           |                ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: an age public key, age1 and 58 letters and digits (npm run keys makes one)
        found:    the text "age1ql3z7hjy45pw3hyww5ayyfg7zqgvc7w3j2elw8zmrj2kg5sfn9aqmcac8p"
        to do:    Copy the key again: a letter of it is wrong, missing or too many.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it.each([
    ['a private key where the public one belongs', 'publicKeys: [AGE-SECRET-KEY-1QQ]', 'an age public key'],
    ['a way of delivery that there is not', 'delivery: [fax]', 'save, share, mail or post'],
    ['post without its address', 'delivery: [post]', 'post without an address'],
    ['an address without post', 'postTo: https://orders.quay.example', 'without post'],
    ['an address that is not encrypted', 'postTo: http://orders.quay.example', 'an address such as https'],
    [
      'a slot that nothing fills',
      'payments: [{ id: a, label: A, words: "Pay {amount}." }]',
      '{number} and {total}',
    ],
    [
      'a link that runs a script',
      'payments: [{ id: a, label: A, words: A, link: "javascript:alert(1)" }]',
      'an address such as',
    ],
    ['a way named twice', 'delivery: [save, save]', '"save" again'],
    ['a key named twice', `publicKeys: [${KEY}, ${KEY}]`, 'duplicate-id'],
    ['two consents of one name', 'consents: [{ id: a, text: A }, { id: a, text: B }]', '"a" again'],
  ])('is refused with %s', (_, line, told) => {
    expect(terms(line)).toContain(told);
  });
});
