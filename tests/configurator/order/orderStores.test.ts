import { describe, expect, it, vi } from 'vitest';
import { forgetAll } from '../../../src/configurator/keeping/forgetAll.ts';
import { consentField, ofPair } from '../../../src/configurator/order/typed.ts';
import { readOrder } from '../../../src/order/readOrder.ts';
import { makeKeys } from '../../../src/order/seal.ts';
import { PICTURE } from '../../order/orders.ts';
import { emptyShelves, refusing } from '../keeping/shelf.ts';
import { shop } from '../shop.ts';
import { basketOf, fillIn, MYOPE, opened } from './opened.ts';

const POST = { delivery: ['post', 'save'] as const, postTo: 'https://orders.example/in' };
const picture = (size = PICTURE.length) => ({
  name: 'paper.jpg',
  size,
  arrayBuffer: async () => PICTURE.slice().buffer,
});

describe('an order page', () => {
  it('makes a sealed file of two pairs that the workroom reads, with all that was entered', async () => {
    const keys = await makeKeys();
    const basket = basketOf(['sanderling', MYOPE], ['dunlin', { ...MYOPE, use: 'none' }]);
    const { stores, told } = await opened({ basket, order: { publicKeys: [keys.recipient] } });
    fillIn(stores);
    stores.form.enter(ofPair(1, 'written'), 'OD -3.25\r\nOS <b>-2.75</b>');
    stores.form.enter(ofPair(1, 'baseCurve'), '4,25');
    await stores.form.attach(1, [picture()]);
    expect(stores.open.get()).toEqual([]);
    await stores.send('save');
    expect(stores.state.get().code).toBe('saved');
    const [file] = told.saved;
    expect(file?.name).toMatch(/^order-\d{4}-\d{4}-\d{4}\.json\.age$/);
    const read = await readOrder(file?.bytes ?? new Uint8Array(), { identities: [keys.identity] });
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    expect(read.sealed).toBe(true);
    expect(read.digest).toBe(stores.form.gone.get()?.digest);
    expect(read.order).toMatchObject({
      number: stores.form.number.get(),
      buyer: { name: 'Ada Marsh', lines: ['4 Tide Street', 'Merriwick, Maine 04000'], phone: '' },
      consents: shop.shop.order.consents,
      payment: { id: 'invoice' },
      pairs: [
        {
          prescription: { written: 'OD -3.25\nOS <b>-2.75</b>', attachments: [{ type: 'image/jpeg' }] },
          measuredBy: 'optician',
          wornBaseCurveD: 4.25,
        },
        { prescription: null, wornBaseCurveD: null },
      ],
    });
    const total = stores.basket.answered.get()?.answer.price?.total;
    expect(read.order.shown.price.total).toBe(total);
  });

  it('makes nothing while anything is missing, and says where each thing belongs', async () => {
    const entries = { ...MYOPE, 'right.sphere': '-6.25', 'left.sphere': '-6.00', issued: '' };
    const { stores, told } = await opened({ basket: basketOf(['sanderling', entries]) });
    await stores.send('save');
    expect([stores.state.get().code, told.saved]).toEqual(['open', []]);
    const fields = stores.open.get().map(({ field }) => field);
    expect(fields).toContain('pair.1.wearer');
    expect(fields).toContain('pair.1.issued');
    expect(fields).toContain('pair.1.prescriber');
    expect(fields).toContain('pair.1.measuredBy');
    expect(fields.filter((field) => field.startsWith('pair.1.caution.'))).toHaveLength(1);
    expect(fields).toContain('email');
    expect(fields).toContain(consentField('health-data'));
    expect(fields.at(-1)).toBe('payment');
  });

  it('does not ask who measured a pair without power and measurements', async () => {
    const { stores } = await opened({ basket: basketOf(['dunlin', { use: 'none' }]) });
    expect(stores.open.get().map(({ field }) => field)).not.toContain(ofPair(1, 'measuredBy'));
    expect(stores.draft.get()?.pairs[0]?.measuredBy).toBe('nobody');
  });

  it('asks again where the words beside a tick are no longer those that were accepted', async () => {
    const { stores } = await opened();
    fillIn(stores);
    stores.form.enter(consentField('cautions'), 'Anything goes.');
    expect(stores.open.get().map(({ field }) => field)).toEqual([consentField('cautions')]);
  });

  it.each([
    ['a frame that is gone', { pairs: [{ id: 4, frame: 'dodo', entries: {} }], terms: {} }, ['pair.4']],
    ['an entry that cannot be read', basketOf(['sanderling', { ...MYOPE, 'right.sphere': 'x' }]), ['pair.1']],
    ['an entry that is not there', basketOf(['sanderling', { ...MYOPE, 'pd.left': '' }]), ['pair.1']],
    ['a refused pair', basketOf(['sanderling', { ...MYOPE, 'right.sphere': '-28' }]), ['pair.1']],
  ])('leads to the pair with %s', async (_, basket, fields) => {
    const { stores } = await opened({ basket });
    fillIn(stores);
    expect(stores.open.get().map(({ field }) => field)).toEqual(expect.arrayContaining(fields));
  });

  it('posts once, the same file again after a failure, and tells a change', async () => {
    const answers: (number | null)[] = [null, 500, 204, 204];
    const sent: Uint8Array[] = [];
    const post = async (_: string, { bytes }: { readonly bytes: Uint8Array }) => {
      sent.push(bytes);
      return answers.shift() ?? null;
    };
    const keys = await makeKeys();
    const { stores } = await opened({
      order: { ...POST, publicKeys: [keys.recipient] },
      device: { post },
    });
    fillIn(stores);
    const number = stores.form.number.get();
    await stores.send('post');
    expect(stores.state.get().code).toBe('unanswered');
    await stores.send('post');
    expect(stores.state.get()).toEqual({ code: 'refused', status: 500 });
    expect([stores.unsaved.get(), stores.form.gone.get()]).toEqual([true, null]);
    await stores.send('post');
    expect(stores.state.get().code).toBe('posted');
    // Sealing draws a key by chance: equal bytes are one file.
    expect(sent[1]).toEqual(sent[0]);
    expect(sent[2]).toEqual(sent[0]);
    await stores.send('post');
    expect([stores.state.get().code, sent.length, stores.unsaved.get()]).toEqual(['already', 3, false]);
    await stores.send('save');
    expect(stores.form.gone.get()?.how).toBe('posted');
    stores.form.enter('notes', 'The case in blue');
    expect([stores.changed.get(), stores.unsaved.get()]).toEqual([true, true]);
    await stores.send('post');
    expect([stores.state.get().code, sent.length, stores.changed.get()]).toEqual(['posted', 4, false]);
    expect(stores.form.number.get()).toBe(number);
    const reads = await Promise.all(
      [sent[0], sent[3]].map((bytes) =>
        readOrder(bytes ?? new Uint8Array(), { identities: [keys.identity] }),
      ),
    );
    expect(reads.map((read) => read.ok && read.order.number)).toEqual([number, number]);
  });

  it('does not try to post without a line, and takes one press at a time', async () => {
    const { stores, told } = await opened({ order: POST, device: { isOnline: () => false } });
    fillIn(stores);
    await Promise.all([stores.send('post'), stores.send('save')]);
    expect([stores.state.get().code, told.saved.length, told.posted.length]).toEqual(['offline', 0, 0]);
  });

  it.each(['cancelled', 'again', 'unshared'] as const)('stays unsent when sharing is %s', async (how) => {
    const { stores } = await opened({ device: { share: async () => how } });
    fillIn(stores);
    await stores.send('share');
    expect([stores.state.get().code, stores.form.gone.get(), stores.unsaved.get()]).toEqual([
      how,
      null,
      true,
    ]);
  });

  it('shares a text that the workroom reads, sealed or not', async () => {
    const keys = await makeKeys();
    for (const publicKeys of [[], [keys.recipient]]) {
      const { stores, told } = await opened({ order: { publicKeys } });
      fillIn(stores);
      await stores.send('share');
      const [file] = told.shared;
      expect([file?.type, file?.name.slice(-4)]).toEqual(['text/plain', '.txt']);
      const read = await readOrder(file?.bytes ?? new Uint8Array(), { identities: [keys.identity] });
      expect(read).toMatchObject({ ok: true, sealed: publicKeys.length > 0 });
    }
  });

  it('opens a mail that holds the number, and nothing of buyer or prescription', async () => {
    const { stores, told } = await opened();
    fillIn(stores);
    await stores.send('mail');
    expect(stores.state.get().code).toBe('mailed');
    const mail = decodeURIComponent(told.mails[0] ?? '');
    expect(mail).toContain(told.saved[0]?.name);
    expect(mail).not.toMatch(/Ada|3\.25|Tide/);
  });

  it('makes no file where sealing fails, and loses nothing', async () => {
    const reported = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const { stores, told } = await opened({ order: { publicKeys: ['age1nonsense'] } });
    fillIn(stores);
    await stores.send('save');
    expect([stores.state.get().code, told.saved.length]).toEqual(['unsealed', 0]);
    expect(stores.form.typed.get()['name']).toBe('Ada Marsh');
    expect(reported).toHaveBeenCalledOnce();
    reported.mockRestore();
  });
});

describe('what is typed on it', () => {
  it('is kept in the tab alone once that is ticked, with what became of it, and is gone after "Forget all"', async () => {
    const shelves = emptyShelves();
    const first = await opened({ shelves });
    fillIn(first.stores);
    expect([...shelves.tab.stored.keys()]).toEqual(['bevelbook.basket.1']);
    first.stores.form.keep(true);
    expect(first.stores.unsaved.get()).toBe(false);
    await first.stores.send('save');
    expect([...shelves.tab.stored.keys()].sort()).toEqual(['bevelbook.basket.1', 'bevelbook.order.1']);
    expect(shelves.device.stored.size).toBe(0);
    const { stores } = await opened({ shelves });
    expect(stores.form.typed.get()).toEqual(first.stores.form.typed.get());
    expect(stores.form.number.get()).toBe(first.stores.form.number.get());
    expect([stores.state.get().code, stores.changed.get()]).toEqual(['saved', false]);
    expect(forgetAll(shelves)).toBe(true);
    stores.clear();
    expect([shelves.tab.stored.size, stores.form.typed.get(), stores.form.gone.get()]).toEqual([0, {}, null]);
    expect(stores.form.number.get()).not.toBe(first.stores.form.number.get());
  });

  it('is said not to be kept where the browser refuses, and then still asked about before leaving', async () => {
    const { stores } = await opened({ shelves: { ...emptyShelves(), tab: refusing } as never });
    stores.form.enter('name', 'Ada');
    stores.form.keep(true);
    expect([stores.form.refused.get(), stores.unsaved.get()]).toEqual([true, true]);
  });

  it.each([
    '{',
    '{"number":"123456789012","typed":{}}',
    '{"number":7,"typed":{}}',
    '{"number":"047991168750","typed":{"name":7}}',
  ])('is dropped where %s stands in its place', async (text) => {
    const shelves = emptyShelves();
    shelves.tab.setItem('bevelbook.order.1', text);
    const { stores } = await opened({ shelves });
    expect([stores.form.damaged, stores.form.kept.get()]).toEqual([true, false]);
    expect(shelves.tab.getItem('bevelbook.order.1')).toBeNull();
  });

  it('stays while files are refused: a wrong kind, one too large, one too many, one that cannot be read', async () => {
    const { stores } = await opened();
    await stores.form.attach(1, [
      { name: 'a.jpg', size: 4, arrayBuffer: async () => new TextEncoder().encode('<svg').buffer },
      picture(12_000_001),
      {
        name: 'gone.pdf',
        size: 9,
        arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotFoundError')),
      },
      ...[1, 2, 3, 4, 5].map(() => picture()),
    ]);
    expect(stores.form.notTaken.get()[1]?.map(({ code }) => code)).toEqual([
      'type',
      'too-large',
      'unread',
      'many',
    ]);
    expect(stores.form.files.get()[1]).toHaveLength(4);
    expect(stores.unsaved.get()).toBe(true);
    stores.form.detach(1, 0);
    expect(stores.form.files.get()[1]).toHaveLength(3);
  });
});
