import { describe, expect, it } from 'vitest';
import { mailLink } from '../../src/order/mail.ts';

const words = {
  'order.mail.subject': 'Order {number} & more',
  'order.mail.body': 'Attach {file}.\nTo {shop}?',
};
const shop = { name: 'Quay & Co', contact: { email: 'bench+orders@quay.example' } };

describe('the mail link', () => {
  it('names number and file, asks to attach it, and reads back as it was written', () => {
    // biome-ignore lint/suspicious/noExplicitAny: a link needs no more of the shop
    const link = new URL(mailLink({ shop, words } as any, '482109375562', true));
    expect(decodeURIComponent(link.pathname)).toBe('bench+orders@quay.example');
    const query = new URLSearchParams(link.search.replaceAll('+', '%2B'));
    expect(query.get('subject')).toBe('Order 4821-0937-5562 & more');
    expect(query.get('body')).toBe('Attach order-4821-0937-5562.json.age.\r\nTo Quay & Co?');
  });
});
