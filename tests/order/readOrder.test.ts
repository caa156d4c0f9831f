import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toBase64 } from '../../src/order/base64.ts';
import { orderBytes } from '../../src/order/makeOrder.ts';
import type { Migrations } from '../../src/order/migrate.ts';
import type { Order } from '../../src/order/order.ts';
import { MOST_FILE_BYTES } from '../../src/order/plainBytes.ts';
import { readOrder } from '../../src/order/readOrder.ts';
import { refusalText } from '../../src/order/refusal.ts';
import { makeKeys, seal } from '../../src/order/seal.ts';
import { shownOf } from '../../src/order/shown.ts';
import { quote } from '../../src/quote/quote.ts';
import { outcomeOf } from './fuzzing.ts';
import { bytesOf, draftOf, loose, orderOf, PICTURE, pairsOf, shop } from './orders.ts';
import { requests } from './packages.ts';

const [mine, other] = await Promise.all([makeKeys(), makeKeys()]);
const order = orderOf();

async function told(bytes: Uint8Array, identities: readonly string[] = []): Promise<string> {
  const read = await readOrder(bytes, { identities });
  return read.ok ? 'an order' : read.refusals.map((each) => refusalText(shop.words, each)).join('\n');
}

/** The order with one change, read. */
// biome-ignore lint/suspicious/noExplicitAny: what a sender may write
const changed = (change: (json: any) => void) => {
  const json = loose(order);
  change(json);
  return told(bytesOf(json));
};

describe('an order file', () => {
  it('holds the order to the cent and to 0.001 mm, sealed or not, and the shop answers it the same', async () => {
    await fc.assert(
      fc.asyncProperty(requests, fc.boolean(), async (asked, sealing) => {
        const before = quote(shop, asked);
        if (!before.ok) throw new Error(JSON.stringify(before.faults));
        const { answer } = before;
        const made = orderOf(asked, { answer, pairs: pairsOf(asked, answer) });
        const plain = orderBytes(made);
        const file = sealing ? await seal(plain, [other.recipient, mine.recipient]) : plain;
        const read = await readOrder(file, { identities: [mine.identity] });
        if (!read.ok) throw new Error(JSON.stringify(read.refusals));
        expect(read.order).toEqual(made);
        expect(read.sealed).toBe(sealing);
        expect(quote(shop, read.order.request)).toEqual(before);
        expect(read.order.shown).toEqual(shownOf(answer));
      }),
      { numRuns: 100 },
    );
  });

  it('keeps HTML and script in every text as the text that it is', async () => {
    const nasty = '<script>alert(1)</script><img src=x onerror="alert(1)">&amp;\'"`';
    const draft = draftOf();
    const made = orderOf(undefined, {
      buyer: { name: nasty, lines: [nasty], email: nasty, phone: nasty },
      pairs: draft.pairs.map((pair) => ({
        ...pair,
        wearer: nasty,
        measuredNote: nasty,
        prescription: { written: nasty, prescriber: { name: nasty, place: nasty }, attachments: [] },
      })),
      notes: nasty,
    });
    const read = await readOrder(orderBytes(made), { identities: [] });
    expect(read).toMatchObject({ ok: true, order: { buyer: { name: nasty }, notes: nasty } });
  });

  it('carries pictures and PDFs that are what they say', async () => {
    const withFile = (type: string, bytes: Uint8Array) =>
      changed((json) => {
        json.pairs[0].prescription.attachments = [{ name: 'paper', type, base64: toBase64(bytes) }];
      });
    expect(await withFile('image/jpeg', PICTURE)).toBe('an order');
    expect(await withFile('application/pdf', PICTURE)).toContain('is not what it says it is');
    expect(await withFile('image/jpeg', bytesOf('<html><script>'))).toContain('is not what it says it is');
  });

  it('of an older version opens by the steps that lead from it', async () => {
    const old = readFileSync('tests/fixtures/orders/version-0.json');
    // A version that never was: it had the address as one text and knew nothing of who measured.
    const steps: Migrations = new Map([
      [
        0,
        ({ address, pairs, ...rest }) => ({
          ...rest,
          'bevelbook-order': 1,
          buyer: { ...(rest['buyer'] as object), lines: String(address).split('\n') },
          pairs: (pairs as object[]).map((pair) => ({ ...pair, measuredBy: 'nobody', measuredNote: '' })),
        }),
      ],
    ]);
    const read = await readOrder(new Uint8Array(old), { identities: [], migrations: steps });
    expect(read).toMatchObject({
      ok: true,
      order: { buyer: { lines: ['4 Tide Street', 'Merriwick'] }, pairs: [{ measuredBy: 'nobody' }] },
    });
    expect(await told(new Uint8Array(old))).toMatchInlineSnapshot(
      `"The order says that it is of version 0. No version of this program has written that."`,
    );
  });

  it('of a version to come is refused, whatever else is in it', async () => {
    expect(await told(bytesOf({ 'bevelbook-order': 2, all: 'new' }))).toMatchInlineSnapshot(
      `"The order is of version 2, and this program knows versions up to 1. Update the program; the file is not at fault."`,
    );
  });
});

describe('a file that is none', () => {
  const whole = orderBytes(order);
  it.each<[string, Uint8Array, string]>([
    ['empty', new Uint8Array(), 'The file is empty.'],
    [
      'too large',
      new Uint8Array(MOST_FILE_BYTES + 1).fill(32),
      'The file has 20.0 MB; an order file has at most 20.0 MB',
    ],
    ['a zip', new Uint8Array([0x50, 0x4b, 3, 4, 20, 0]), 'packed archive'],
    ['a picture', PICTURE, 'a picture, not an order file'],
    ['a PDF', bytesOf('%PDF-1.7\n'), 'a PDF'],
    ['bytes', new Uint8Array([0xc3, 0x28, 0xff, 0xfe]), 'not a text in UTF-8'],
    ['prose', bytesOf('Dear shop, I would like glasses.'), 'not JSON'],
    ['HTML', bytesOf('<!doctype html><script>alert(1)</script>'), 'not JSON'],
    ['cut short', whole.subarray(0, whole.length / 2), 'cut short'],
    ['a list', bytesOf([]), 'does not say that it is an order'],
    ['other JSON', bytesOf({ frame: 'ruff' }), 'bevelbook-order is missing'],
    ['null', bytesOf('null'), 'does not say'],
    [
      'of no version',
      bytesOf({ 'bevelbook-order': '1' }),
      'bevelbook-order: expected a whole number, found "1"',
    ],
    ['of a version below all', bytesOf({ 'bevelbook-order': -1 }), 'expected a whole number, found -1'],
  ])('is refused in a sentence when it is %s', async (_, bytes, sentence) => {
    expect(await told(bytes)).toContain(sentence);
  });

  it('is refused when it is sealed to nobody here, or damaged', async () => {
    const sealed = await seal(whole, [other.recipient]);
    expect(await told(sealed)).toContain('no private key was given');
    expect(await told(sealed, [mine.identity])).toContain('sealed to another key');
    expect(await told(sealed.subarray(0, sealed.length - 1), [other.identity])).toContain(
      'damaged or was changed',
    );
    expect(await told(await seal(bytesOf('hello'), [mine.recipient]), [mine.identity])).toContain('not JSON');
    expect(
      await told(await seal(await seal(whole, [mine.recipient]), [mine.recipient]), [mine.identity]),
    ).toContain('not a text');
  });
});

describe('a thousand files that were changed by chance', () => {
  it('are orders that the shop answers, or clean refusals', async () => {
    const outcomes = new Set<string>();
    for (let seed = 0; seed < 1000; seed += 1) for (const code of await outcomeOf(seed)) outcomes.add(code);
    // Enough kinds that the changes reach every layer of the reader.
    expect(outcomes).toContain('order');
    for (const code of [
      'tampered',
      'not-json',
      'forbidden-key',
      'malformed',
      'implausible',
      'odd-text',
      'pairs-differ',
    ])
      expect(outcomes).toContain(code);
  });
});

describe('an order that was tampered with', () => {
  // biome-ignore lint/suspicious/noExplicitAny: what a sender may write
  it.each<[string, (json: any) => void, string]>([
    [
      'a wrong check digit',
      (json) => {
        json.number = '123456789012';
      },
      'number: expected 12 digits with the right check digits, found "123456789012"',
    ],
    [
      'a number as a path',
      (json) => {
        json.number = '../../etc/passwd';
      },
      'number: expected',
    ],
    [
      'a key more',
      (json) => {
        json.admin = true;
      },
      'holds the key "admin"',
    ],
    [
      'a key less',
      (json) => {
        delete json.buyer.name;
      },
      'buyer.name: expected a text, found nothing',
    ],
    [
      'a text for a number',
      (json) => {
        json.shown.price.total = '0';
      },
      'shown.price.total: expected a whole number of minor units, found "0"',
    ],
    [
      'an amount beyond all money',
      (json) => {
        json.shown.price.total = 1e300;
      },
      'shown.price.total: expected',
    ],
    [
      'a sphere that no eye has',
      (json) => {
        json.request.pairs[0].prescription.right.sphere = -999;
      },
      'The sphere is out of range. Expected -30 to 30 D, found "-999"',
    ],
    [
      'a PD of a decimal slip',
      (json) => {
        json.request.pairs[0].fit.pd.right = 3.15;
      },
      'did you mean 31.5?',
    ],
    [
      'a date that is none',
      (json) => {
        json.request.date = '2026-02-30';
      },
      'request.date: expected a civil date',
    ],
    [
      'a second telling of a pair',
      (json) => {
        json.pairs.push(json.pairs[0]);
      },
      'asks for 1 pairs, tells of 2 and shows 1',
    ],
    [
      'a prescription on one side only',
      (json) => {
        json.pairs[0].prescription = null;
      },
      'null exactly where the request has none',
    ],
    [
      'a link that runs',
      (json) => {
        json.payment.link = 'javascript:alert(1)';
      },
      'an address that begins with https://',
    ],
    [
      'a text too long',
      (json) => {
        json.notes = 'x'.repeat(5001);
      },
      'notes is a text of 5001 letters',
    ],
    [
      'a frame of a million letters',
      (json) => {
        json.request.pairs[0].frame = 'x'.repeat(1e6);
      },
      'is a text of 1000000 letters',
    ],
    [
      'a turned-around name',
      (json) => {
        json.buyer.name = 'Ada \u202emarsh';
      },
      'buyer.name holds control characters',
    ],
    [
      'half a character',
      (json) => {
        json.notes = '\ud800';
      },
      'notes holds control characters',
    ],
  ])('by %s is refused with its place', async (_, change, sentence) => {
    expect(await changed(change)).toContain(sentence);
  });

  it('by keys that reach into the language is refused, and nothing is reached', async () => {
    for (const key of ['__proto__', 'constructor', 'prototype']) {
      const text = JSON.stringify(order).replace('"buyer":{', `"buyer":{"${key}":{"polluted":true},`);
      expect(await told(bytesOf(text))).toContain('Do not trust it');
    }
    expect('polluted' in {}).toBe(false);
  });

  it('by endless nesting or huge numbers is refused', async () => {
    const deep = JSON.stringify(order).replace(
      '"notes":""',
      `"notes":${'['.repeat(50_000)}${']'.repeat(50_000)}`,
    );
    expect(await told(bytesOf(deep))).toContain('nests deeper than 16 levels');
    const huge = JSON.stringify(order).replace('"sphere":-6.25', '"sphere":1e999');
    expect(await told(bytesOf(huge))).toContain('request.pairs.0.prescription.right.sphere: expected');
  });

  it('by lists and maps without end is refused, however large', async () => {
    const items = (count: number) => bytesOf(`{"bevelbook-order":1,"a":[${'0,'.repeat(count)}0]}`);
    expect(await told(items(2000))).toContain('items; at most 2000 are allowed');
    expect(await told(items(9_000_000))).toContain('than any order');
    expect(await told(bytesOf('['.repeat(19_000_000)))).toContain('than any order');
  });

  it('in a hundred places is told of the first ones and the count of the rest', async () => {
    const text = await changed((json) => {
      for (let at = 0; at < 100; at += 1) json.shown.pairs[0].findings.push(at);
    });
    expect(text.split('\n')).toHaveLength(9);
    expect(text).toContain('There are 92 more faults like these.');
  });

  it('keeps its own digest: what the slip says betrays a change', async () => {
    const digest = async (made: Order) => {
      const read = await readOrder(orderBytes(made), { identities: [] });
      return read.ok ? read.digest : 'none';
    };
    expect(await digest(order)).toBe(await digest(loose(order)));
    expect(await digest(order)).not.toBe(await digest({ ...order, notes: 'And a case.' }));
  });
});
