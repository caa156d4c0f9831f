import { describe, expect, it } from 'vitest';
import { orderBytes, orderFileName } from '../../src/order/makeOrder.ts';
import { readOrder } from '../../src/order/readOrder.ts';
import { draftOf, orderOf, request, shop } from './orders.ts';

describe('an order', () => {
  it('carries the consents that were accepted, word for word', () => {
    const [first] = shop.shop.order.consents;
    expect(orderOf(request, { accepted: [first?.id ?? ''] }).consents).toEqual([first]);
  });

  it('carries the way to pay with number and total filled in', () => {
    const made = orderOf();
    const { words, link } = made.payment ?? {};
    expect(words).toContain('numbered 0479-9116-8750');
    expect(words).toMatch(/an invoice over \$[\d,]+\.\d\d,/);
    expect(words).not.toContain('{');
    expect(link).toBeNull();
  });

  it('has none where the shop names no such way', () => {
    expect(orderOf(request, { payment: 'barter' }).payment).toBeNull();
  });

  it('is made of plain characters, whatever was typed, so that its own reader takes it', async () => {
    const typed = ' Ad\u0061\u0308\u0000 \u202eMarsh\r\nand\u0007 \ud800so on ';
    const made = orderOf(request, {
      buyer: { name: typed, lines: [typed, '  ', ''], email: '', phone: '' },
      notes: typed,
    });
    expect(made).toMatchObject({
      buyer: { name: 'Adä Marsh and so on', lines: ['Adä Marsh and so on'] },
      notes: 'Adä Marsh\nand so on',
    });
    expect(await readOrder(orderBytes(made), { identities: [] })).toMatchObject({ ok: true, order: made });
  });

  it('is the same file for the same draft', () => {
    expect(orderBytes(orderOf())).toEqual(orderBytes(orderOf()));
  });

  it('goes into a file that is named for it', () => {
    expect(orderFileName(draftOf().number, false)).toMatch(/^order-\d{4}-\d{4}-\d{4}\.json$/);
    expect(orderFileName(draftOf().number, true)).toMatch(/\.json\.age$/);
  });
});
