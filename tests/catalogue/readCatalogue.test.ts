import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Catalogue } from '../../src/catalogue/catalogue.ts';
import type { ContentFault } from '../../src/catalogue/fault.ts';
import { readCatalogue } from '../../src/catalogue/readCatalogue.ts';
import type { SourceFile } from '../../src/catalogue/reading/sourceText.ts';
import { file, goodShop, shopEdited, shopWith, textOf } from './faultyShop.ts';

function read(files: readonly SourceFile[]): Catalogue {
  const reading = readCatalogue(files);
  if (!reading.ok) throw new Error(reading.faults.map(({ code }) => code).join());
  return reading.catalogue;
}

const good = read(goodShop());

/** The text without its byte-order mark, with LF ends. */
function plainText({ bytes }: SourceFile): string {
  return new TextDecoder().decode(bytes).replace(/\r\n?/g, '\n');
}

/** What must hold of every fault, whatever the file. */
function validate(fault: ContentFault, files: readonly SourceFile[]) {
  for (const part of [fault.expected, fault.received, fault.hint]) expect(part).not.toBe('');
  expect(fault.length).toBeGreaterThanOrEqual(1);
  const source = files.find(({ path }) => path === fault.file);
  if (source === undefined || fault.sourceLine === '') return;
  const line = plainText(source).split('\n')[fault.line - 1];
  expect(fault.sourceLine).toBe(line);
  expect(fault.column).toBeLessThanOrEqual((line ?? '').length + 1);
}

describe('a faultless shop', () => {
  it('is read with all its shorthand resolved', () => {
    const dunlin = good.frames.find(({ id }) => id === 'dunlin');
    expect(dunlin).toMatchObject({
      priceMinor: 14900,
      wearer: 'adult',
      sun: false,
      mounting: { kind: 'full' },
      story: '<p>Named after a <strong>small</strong> wader.</p>\n',
      colourways: [
        {
          front: { colour: '#5b3a1e', second: null, finish: 'solid' },
          temples: { colour: '#5b3a1e', second: null, finish: 'solid' },
          priceDifferenceMinor: 0,
          stock: 'in-stock',
        },
        { bridge: { colour: '#3c4650', second: null, finish: 'brushed' }, priceDifferenceMinor: 1000 },
      ],
      sizes: [
        {
          aMm: 48,
          bMm: 42,
          dblMm: 20,
          edMm: 48.5,
          templeMm: 145,
          outline: { origin: 'fitted', family: 'round' },
        },
      ],
    });
    expect(good.frames[1]?.mounting).toEqual({
      kind: 'drilled',
      holes: [
        { side: 'nasal', insetMm: 4, aboveCentreMm: 4, diameterMm: 1.4 },
        { side: 'temporal', insetMm: 4, aboveCentreMm: 4, diameterMm: 1.4 },
      ],
    });
    expect(good.shop).toMatchObject({
      currencyDigits: 2,
      tax: [{ ratePpm: 55_000 }],
      shipping: [{ amountMinor: 850 }],
    });
    expect(good.shop).not.toHaveProperty('collections');
    expect(good.materials[1]?.surfaced?.baseCurves).toEqual([
      { powerD: 2, conic: null },
      { powerD: 4, conic: null },
      { powerD: 6, conic: -0.5 },
    ]);
    expect(good.materials[1]?.limits).toEqual([
      { kind: 'not-with', ids: { tint: ['brown'] }, level: 'caution', because: 'It takes no dye.' },
    ]);
    expect(good.words).toEqual({ 'page.title': '{name}, optical workshop' });
    expect(good.pages).toEqual([
      {
        slug: 'returns',
        title: 'Returns',
        description: 'How to send a pair back.',
        menu: 1,
        html: '<p>Write first.</p>\n',
      },
    ]);
  });

  it('has its options in the order that the owner gave, and lists that say all filled in', () => {
    expect(good.designs.map(({ id }) => id)).toEqual(['single-vision', 'progressive']);
    expect(good.tints.map(({ id }) => id)).toEqual(['clear', 'brown']);
    expect(good.designs.map(({ materials }) => materials)).toEqual([['standard', 'tough'], ['standard']]);
    expect(good.materials[0]?.stock[0]?.tints).toEqual(['clear', 'brown']);
    expect(good.designs[0]).not.toHaveProperty('order');
  });

  it('has its promotions as they are tried', () => {
    expect(good.promotions.map(({ id, code, gift, joins }) => ({ id, code, gift, joins }))).toEqual([
      {
        id: 'autumn',
        code: 'AUTUMN',
        gift: { kind: 'percent', on: 'frame', sharePpm: 100_000 },
        joins: 'none',
      },
      {
        id: 'lenses-in',
        code: null,
        gift: {
          kind: 'included-lens',
          design: 'single-vision',
          material: 'standard',
          tint: null,
          coating: 'hard',
        },
        joins: ['autumn'],
      },
    ]);
    expect(good.promotions[1]?.scope).toMatchObject({
      frames: ['dunlin'],
      leastGoodsMinor: 10_000,
      leastPairs: 1,
    });
  });

  it('is plain JSON', () => {
    expect(JSON.parse(JSON.stringify(good))).toEqual(good);
  });
});

describe('the same shop', () => {
  const dunlin = textOf('frames/dunlin.md');
  it.each([
    ['with CRLF line ends', (text: string) => text.replaceAll('\n', '\r\n')],
    ['with the line ends of old machines', (text: string) => text.replaceAll('\n', '\r')],
    ['with a byte-order mark', (text: string) => `\ufeff${text}`],
    [
      'with spaces behind the lines',
      (text: string) => text.replace('---\n', '---  \n').replaceAll(',\n', ', \n'),
    ],
    ['with comments and empty lines', (text: string) => text.replace('massG', '\n# heavy\n\nmassG')],
    ['with tabs behind the values', (text: string) => text.replace('massG: 22', 'massG:\t22\t# g')],
    [
      'with an anchor',
      (text: string) => text.replace('inTheBox: [Case, Cloth]', 'inTheBox: [&c Case, Cloth]'),
    ],
    [
      'with flow in place of block',
      (text: string) => text.replace('inTheBox: [Case, Cloth]', 'inTheBox:\n  - Case\n  - Cloth'),
    ],
    ['without a last line end', (text: string) => text.trimEnd()],
  ])('reads the same %s', (_, change) => {
    expect(change(dunlin)).not.toBe(dunlin);
    expect(read(shopWith(file('frames/dunlin.md', change(dunlin))))).toEqual(good);
  });

  it('law: reads the same whatever the order of its files', () => {
    const files = goodShop();
    fc.assert(
      fc.property(fc.shuffledSubarray(files, { minLength: files.length }), (shuffled) => {
        expect(read(shuffled)).toEqual(good);
      }),
      { numRuns: 5 },
    );
  });

  it('reads umlauts, and an anchor that two fields share', () => {
    const text = dunlin
      .replace('summary: A round', 'summary: Größe µm, a round')
      .replace('"#5b3a1e"', '&kelp "#5b3a1e", temples: *kelp');
    const frame = read(shopWith(file('frames/dunlin.md', text))).frames[0];
    expect(frame?.summary).toBe('Größe µm, a round acetate front.');
    expect(frame?.colourways[0]?.temples.colour).toBe('#5b3a1e');
  });

  it('is read in the digits of its currency', () => {
    const dinars = goodShop().map((one) => {
      const text = plainText(one)
        .replace('currency: USD', 'currency: KWD')
        .replaceAll(/"(-?\d+\.\d\d)"/g, '"$10"');
      return { ...one, bytes: new TextEncoder().encode(text) };
    });
    expect(read(dinars).frames[0]?.priceMinor).toBe(149_000);
    expect(read(dinars).shop.currencyDigits).toBe(3);
  });
});

describe('faults', () => {
  it('of all files come together, sorted by place', () => {
    const files = [
      ...shopEdited('frames/tern.md', 'collection: marsh', 'collection: mash').filter(
        ({ path }) => !/dunlin|hard/.test(path),
      ),
      file(
        'frames/dunlin.md',
        textOf('frames/dunlin.md').replace('massG: 22', 'massG: heavy').replace('ed: 48.5', 'ed: 4'),
      ),
      file('lenses/coatings/hard.md', textOf('lenses/coatings/hard.md').replace('hard: true', 'hard: yes')),
    ];
    const reading = readCatalogue(files);
    expect(
      reading.ok ? [] : reading.faults.map(({ file: path, line, code }) => `${path}:${line} ${code}`),
    ).toEqual([
      'content/frames/dunlin.md:12 wrong-type',
      'content/frames/dunlin.md:23 wrong-value',
      'content/frames/tern.md:3 unknown-reference',
      'content/lenses/coatings/hard.md:6 wrong-type',
    ]);
  });

  it('law: no bytes in any file make the reader throw, and every fault lies in its file', () => {
    const files = goodShop();
    const bytes = fc.oneof(
      fc.uint8Array({ maxLength: 200 }),
      fc.string({ unit: 'binary' }).map((text) => new TextEncoder().encode(`---\n${text}\n---\n`)),
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: files.length - 1 }), bytes, (index, spoilt) => {
        const all = files.map((one, at) => (at === index ? { ...one, bytes: spoilt } : one));
        const reading = readCatalogue(all);
        if (!reading.ok) for (const fault of reading.faults) validate(fault, all);
      }),
      { numRuns: 60 },
    );
  });

  it('law: a shop with a few bytes changed is read or refused with a place, never half', () => {
    const files = goodShop();
    const changes = fc.array(fc.tuple(fc.nat(), fc.constantFrom(...'\n\t :-[]{}"\'#&*!|>%@,0a.é')), {
      minLength: 1,
      maxLength: 4,
    });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: files.length - 1 }), changes, (index, all) => {
        const letters = [...plainText(files[index] ?? file('', ''))];
        for (const [at, letter] of all) letters[at % letters.length] = letter;
        const spoilt = files.map((one, at) =>
          at === index ? { ...one, bytes: new TextEncoder().encode(letters.join('')) } : one,
        );
        const reading = readCatalogue(spoilt);
        if (reading.ok) expect(reading.catalogue.frames).toHaveLength(good.frames.length);
        else for (const fault of reading.faults) validate(fault, spoilt);
      }),
      { numRuns: 150 },
    );
  });
});
