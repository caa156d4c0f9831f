import { spawnSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { toBase64 } from '../../src/order/base64.ts';
import { orderBytes, orderFileName } from '../../src/order/makeOrder.ts';
import { orderNumber } from '../../src/order/number.ts';
import type { Order } from '../../src/order/order.ts';
import { MOST_FILE_BYTES } from '../../src/order/plainBytes.ts';
import { makeKeys, seal } from '../../src/order/seal.ts';
import { shopVersion } from '../../src/order/shopVersion.ts';
import { draftOf, orderOf, PICTURE, shop } from '../order/orders.ts';

const [mine, other] = await Promise.all([makeKeys(), makeKeys()]);
const version = await shopVersion(shop);

let folder: string;
let inbox: string;
let key: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'bevelbook-open-'));
  inbox = join(folder, 'in');
  key = join(folder, 'key.txt');
  mkdirSync(inbox);
  writeFileSync(key, `# the workshop's\n${mine.identity}\n`);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function open(args: readonly string[] = ['--identity', key], input = '') {
  const run = spawnSync(process.execPath, ['src/commands/open.ts', inbox, ...args], {
    encoding: 'utf8',
    input,
  });
  return { status: run.status, out: run.stdout, error: run.stderr };
}

const numberOf = (seed: number) => orderNumber(new Uint8Array(16).fill(seed));
const order = (seed: number, changed: Partial<Order> = {}): Order => ({
  ...orderOf(undefined, { number: numberOf(seed), shopVersion: version }),
  ...changed,
});
const put = (name: string, content: string | Uint8Array) => writeFileSync(join(inbox, name), content);
const putSealed = async (made: Order, recipient = mine.recipient) =>
  put(orderFileName(made.number, true), await seal(orderBytes(made), [recipient]));
const papers = () => readdirSync(join(inbox, 'papers')).sort();

describe('npm run open', () => {
  it('turns sealed orders into papers that only the owner can read, and ends with 0', async () => {
    await putSealed(order(1));
    await putSealed(order(2));
    const { status, out, error } = open();
    expect([status, error]).toEqual([0, '']);
    expect(out).toContain('2 files: 2 orders');
    expect(out).not.toContain('not as the buyer saw it');
    expect(papers()).toEqual([`${numberOf(1)}.html`, `${numberOf(2)}.html`].sort());
    const html = readFileSync(join(inbox, 'papers', `${numberOf(1)}.html`), 'utf8');
    expect(html).toContain('Ada Marsh');
    expect(html).toMatch(/<\/html>\s*$/);
    if (process.platform !== 'win32')
      expect(statSync(join(inbox, 'papers', papers()[0] ?? '')).mode & 0o777).toBe(0o600);
  });

  it('takes the key from standard input', async () => {
    await putSealed(order(1));
    expect(open(['--identity', '-'], `${mine.identity}\n`).status).toBe(0);
  });

  it('tells each line that is not as the buyer saw it, in order, and ends with 2', async () => {
    const made = order(1);
    const { price, pairs } = made.shown;
    const [first, ...lines] = price.lines;
    const [pair] = pairs;
    if (!first || !pair?.right) throw new Error('The sample has a line and a right lens.');
    await putSealed({
      ...made,
      shown: {
        ...made.shown,
        pairs: [{ ...pair, right: { ...pair.right, thickestMm: pair.right.thickestMm - 1 } }],
        price: {
          ...price,
          lines: [{ ...first, amount: 100 }, ...lines],
          total: price.total - first.amount + 100,
        },
      },
    });
    const { status, out } = open();
    expect(status).toBe(2);
    expect(out).toContain('not as the buyer saw it:');
    expect(out).toMatch(new RegExp(`${first.label}: shown \\$1.00, now \\$`));
    expect(out).toMatch(/Total: shown \$[\d.]+, now \$[\d.]+/);
    expect(out).toMatch(/Pair 1, right, thickestMm: shown [\d.]+, now [\d.]+/);
  });

  it('says where an order comes from when it is not as it should be', () => {
    put(
      'order.json',
      orderBytes(
        order(1, {
          shop: { name: 'Another', address: 'https://another.example', version: 'f'.repeat(64) },
          consents: [],
        }),
      ),
    );
    const { out } = open([]);
    expect(out).toContain('It was made for another shop: Another, https://another.example.');
    expect(out).toContain('The file was not sealed: whoever saw it could read it.');
    expect(out).toContain('have changed since it was made');
    expect(out).toContain('The consent "health-data" was not accepted');
  });

  it('lays the picture of the prescription beside the papers', async () => {
    const made = order(1);
    const [pair] = made.pairs;
    if (!pair?.prescription) throw new Error('The sample has a prescription.');
    const attachments = [{ name: '../../evil.html', type: 'image/jpeg' as const, base64: toBase64(PICTURE) }];
    await putSealed({ ...made, pairs: [{ ...pair, prescription: { ...pair.prescription, attachments } }] });
    expect(open().status).toBe(0);
    expect(papers()).toContain(`${numberOf(1)}-prescription-1-1.jpg`);
    expect(
      new Uint8Array(readFileSync(join(inbox, 'papers', `${numberOf(1)}-prescription-1-1.jpg`))),
    ).toEqual(PICTURE);
  });

  it('refuses each bad file in a sentence, and opens the others', async () => {
    await putSealed(order(1));
    await putSealed(order(2), other.recipient);
    put('broken.json', orderBytes(order(3)).subarray(0, 900));
    put('scan.jpg', PICTURE);
    put('large.json', new Uint8Array(MOST_FILE_BYTES + 1));
    put('empty.json', '');
    mkdirSync(join(inbox, 'a folder'));
    if (process.platform !== 'win32') {
      symlinkSync('/dev/zero', join(inbox, 'endless.json'));
      symlinkSync('nowhere', join(inbox, 'lost.json'));
      const [makePipe = ''] = ['mkfifo'];
      spawnSync(makePipe, [join(inbox, 'pipe.json')]);
      put('odd\u001b[31mname.json', '{}');
    }
    const { status, out } = open();
    expect(status).toBe(2);
    for (const sentence of [
      'sealed to another key',
      'cut short',
      'a picture, not an order',
      'at most 20.0 MB',
      'is empty',
    ])
      expect(out).toContain(sentence);
    expect(out).toContain(': 1 orders');
    expect(out).not.toContain('\u001b');
    expect(papers()).toEqual([`${numberOf(1)}.html`]);
  });

  it('opens a thousand files', () => {
    const bytes = new TextDecoder().decode(orderBytes(order(1)));
    for (let at = 0; at < 1000; at += 1)
      put(`order-${at}.json`, at % 100 === 0 ? bytes.replace(numberOf(1), numberOf(at)) : '{');
    expect(open([]).out).toContain('1000 files: 10 orders');
  });

  it('writes HTML and script of an order as text', async () => {
    const nasty = '</title></style><script>alert(1)</script><img src=x onerror="alert(1)">\'';
    const draft = draftOf();
    const made = orderOf(undefined, {
      number: numberOf(1),
      buyer: { name: nasty, lines: [nasty], email: nasty, phone: nasty },
      pairs: draft.pairs.map((pair) => ({
        ...pair,
        wearer: nasty,
        measuredNote: nasty,
        prescription: { written: nasty, prescriber: { name: nasty, place: nasty }, attachments: [] },
      })),
      notes: nasty,
    });
    const [pair] = made.shown.pairs;
    if (!pair) throw new Error('The sample has a pair.');
    const finding = {
      rule: 'nasty',
      level: 'stop' as const,
      eye: 'both' as const,
      figures: {},
      message: nasty,
    };
    const lines = made.shown.price.lines.map((line) => ({ ...line, label: nasty, source: nasty }));
    await putSealed({
      ...made,
      shown: {
        ...made.shown,
        pairs: [{ ...pair, findings: [finding] }],
        price: { ...made.shown.price, lines },
      },
      payment: { id: 'nasty', label: nasty, words: nasty, link: null },
    });
    open();
    const html = readFileSync(join(inbox, 'papers', `${numberOf(1)}.html`), 'utf8');
    expect(html).toContain('&lt;script&gt;');
    expect(html).not.toMatch(/<script|<img/);
    for (const end of ['</title>', '</style>']) expect(html.split(end)).toHaveLength(2);
  });

  it('opens an order that came twice once, and keeps two orders of one number apart', () => {
    put('a.json', orderBytes(order(1)));
    put('b.json', orderBytes(order(1)));
    put('c.json', orderBytes(order(1, { notes: 'Another.' })));
    const { status, out } = open([]);
    expect(status).toBe(2);
    expect(out).toContain('the same order as a.json');
    expect(out).toContain('a.json has the same number. The slip of the order in this file says');
    expect(papers()).toHaveLength(2);
  });

  it('writes over no papers that differ unless it is told to', () => {
    put('a.json', orderBytes(order(1)));
    open([]);
    expect(open([]).status).toBe(0);
    const file = join(inbox, 'papers', `${numberOf(1)}.html`);
    writeFileSync(file, 'with my notes');
    const { status, out } = open([]);
    expect(status).toBe(2);
    expect(out).toContain('is there and differs. It was left alone');
    expect(readFileSync(file, 'utf8')).toBe('with my notes');
    expect(open(['--replace']).status).toBe(0);
    expect(readFileSync(file, 'utf8')).toContain('Ada Marsh');
    expect(papers()).toHaveLength(1);
  });

  it('does nothing and ends with 1 when it is asked wrongly', () => {
    const wrong: readonly (readonly [readonly string[], string])[] = [
      [['--fast'], '--identity FILE'],
      [['another'], 'Expected one folder, found 2.'],
      [['--identity', join(folder, 'none.txt')], 'The key file cannot be read'],
      [['--shop', folder], 'shop.yaml'],
    ];
    for (const [args, told] of wrong) {
      const { status, error } = open(args);
      expect(status).toBe(1);
      expect(error).toContain(told);
      expect(error).not.toContain('    at ');
    }
    expect(readdirSync(inbox)).toEqual([]);
  });

  it('says what is wrong with a key file, and never shows what is in it', () => {
    const nearly = `${mine.identity.slice(0, -1)}${mine.identity.endsWith('Q') ? 'P' : 'Q'}`;
    for (const [text, told] of [
      ['', 'holds no private key'],
      [`# a\n${nearly}\n`, 'line 2, begins like a private key and has a typing error'],
      [`# a\nmy key\n`, 'line 2, is neither a private key nor a remark'],
      ['age-encryption.org/v1\n-> scrypt', 'is itself locked with a passphrase'],
    ] as const) {
      const { status, error } = open(['--identity', '-'], text);
      expect(status).toBe(1);
      expect(error).toContain(told);
      expect(error).not.toContain(nearly);
    }
  });

  it('prints the JSON Schema of an order file', () => {
    const schema = JSON.parse(open(['--schema']).out);
    expect(schema.required).toContain('bevelbook-order');
    expect(schema.additionalProperties).toBe(false);
  });
});
