import { describe, expect, it } from 'vitest';
import { inLanguage } from '../../../src/catalogue/languages.ts';
import { readCatalogue } from '../../../src/catalogue/readCatalogue.ts';
import type { SourceFile } from '../../../src/catalogue/reading/sourceText.ts';
import { file, printed, shopWith, textOf } from '../faultyShop.ts';

const ownShop = textOf('shop.yaml').replace('language: en\n', 'language: en\notherLanguages: [fr-CA]\n');
const DUNLIN = `---
summary: Une face ronde en acétate.
material: Acétate de cellulose
comesFitted: Verres de démonstration
inTheBox: [Étui, Chiffon]
colourways: { kelp: Varech, slate: Ardoise }
notOffered: [Ne se fait pas.]
---

Du nom d’un [petit](/frames/tern/) oiseau.
`;

/** The small shop with French for one frame and one sentence, and other files over it. */
const french = (...files: SourceFile[]) =>
  shopWith(
    file('shop.yaml', ownShop),
    file('words/fr-CA/page.yaml', 'page: { title: "{name}, atelier" }\n'),
    file('translations/fr-CA/frames/dunlin.md', DUNLIN),
    ...files,
  );

function read(...files: SourceFile[]) {
  // Of two files with one path the last counts.
  const byPath = new Map(french(...files).map((one) => [one.path, one]));
  const reading = readCatalogue([...byPath.values()]);
  if (!reading.ok) throw new Error(reading.faults.map(({ code, file: at }) => `${at} ${code}`).join());
  const [untranslated] = reading.untranslated;
  const told = inLanguage(reading, 'fr-CA');
  if (untranslated === undefined || told === undefined) throw new Error('The shop has no French.');
  return { reading, own: reading.catalogue, told, untranslated };
}

const frame = ({ frames }: { readonly frames: readonly { readonly id: string }[] }, id = 'dunlin') =>
  frames.find((one) => one.id === id);

describe('the shop in another language', () => {
  it('has the texts of its files, and every figure, id and price of the shop', () => {
    const { own, told } = read();
    expect(frame(told)).toEqual({
      ...frame(own),
      summary: 'Une face ronde en acétate.',
      material: 'Acétate de cellulose',
      comesFitted: 'Verres de démonstration',
      inTheBox: ['Étui', 'Chiffon'],
      colourways: [
        expect.objectContaining({ code: 'kelp', name: 'Varech', priceDifferenceMinor: 0 }),
        expect.objectContaining({ code: 'slate', name: 'Ardoise', priceDifferenceMinor: 1000 }),
      ],
      notOffered: [expect.objectContaining({ size: '48-20', because: 'Ne se fait pas.' })],
      story: '<p>Du nom d’un <a href="/fr/frames/tern/">petit</a> oiseau.</p>\n',
    });
    expect(told.shop).toMatchObject({ language: 'fr-CA', languages: ['en', 'fr-CA'], path: '/fr' });
    expect(told.words['page.title']).toBe('{name}, atelier');
  });

  it('is the shop itself for an order that names no language, and nothing for a language that it lacks', () => {
    const { reading, own } = read();
    expect(inLanguage(reading)).toBe(own);
    expect(inLanguage(reading, 'en')).toBe(own);
    expect(inLanguage(reading, 'de')).toBeUndefined();
  });

  it('stays in the first language where a text is missing, says so to readers aloud, and tells the owner', () => {
    const { own, told, untranslated } = read();
    const story = (frame(own, 'tern') as { readonly story?: string } | undefined)?.story ?? '';
    expect(frame(told, 'tern')).toEqual({
      ...frame(own, 'tern'),
      ...(story === '' ? {} : { story: expect.stringContaining('lang="en"') }),
    });
    expect(untranslated.texts.map(({ file: at }) => at)).toContain(
      'content/translations/fr-CA/frames/tern.md',
    );
    expect(untranslated.texts.map(({ file: at }) => at)).not.toContain(
      'content/translations/fr-CA/frames/dunlin.md',
    );
  });

  it.each([
    ['a text less', '{ kelp: Varech, slate: Ardoise }', '{ kelp: Varech }', 'not-translated'],
    ['a colour that is gone', 'slate: Ardoise', 'slate: Ardoise, rust: Rouille', 'translation-left-over'],
    ['a list of another length', '[Étui, Chiffon]', '[Étui]', 'translation-left-over'],
  ])('is told of %s, with its place, and is still built', (_, passage, by, code) => {
    const { own, told, untranslated } = read(
      file('translations/fr-CA/frames/dunlin.md', DUNLIN.replace(passage, by)),
    );
    const found = untranslated.texts.filter(({ file: at }) => at.endsWith('frames/dunlin.md'));
    expect(found.map((fault) => fault.code)).toEqual([code]);
    expect(found[0]?.line).toBeGreaterThan(1);
    expect(told.frames.length).toBe(own.frames.length);
  });

  it.each([
    ['a price', 'frames/dunlin.md', '---\nprice: "1.00"\n---\n', 'unknown-key'],
    ['a frame that is not there', 'frames/dunlim.md', '---\nsummary: Rien\n---\n', 'nothing-to-translate'],
    ['an outline', 'outlines/ring-44.yaml', 'radiiMm: []\n', 'unknown-file'],
  ])('refuses %s in a translation', (_, path, text, code) => {
    const files = french().filter((one) => one.path !== `content/translations/fr-CA/${path}`);
    const reading = readCatalogue([...files, file(`translations/fr-CA/${path}`, text)]);
    expect(reading.ok ? [] : reading.faults.map((fault) => fault.code)).toContain(code);
  });

  it('is refused where the shop does not name it', () => {
    expect(
      printed(shopWith(file('translations/de/frames/dunlin.md', '---\nsummary: Rund.\n---\n'))),
    ).toContain('the shop does not have this language [unknown-language]');
  });
});

describe('sentences of another language', () => {
  const words = (own: string, told: string) =>
    read(file('words/en/page.yaml', own), file('words/fr-CA/page.yaml', told));

  it('are missing by the file that they belong to, and the first language stands in', () => {
    const { told, untranslated } = words(
      'page: { title: "{name}", end: End }\n',
      'page: { title: "{name}" }\n',
    );
    expect(untranslated.missingWords).toEqual([
      expect.objectContaining({
        file: 'content/words/fr-CA/page.yaml',
        own: 'content/words/en/page.yaml',
        texts: [{ key: 'page.end', text: 'End' }],
      }),
    ]);
    expect(told.words['page.end']).toBe('End');
  });

  it('are told when they are left over or have other slots, and never shown then', () => {
    const { told, untranslated } = words(
      'page: { title: "{name}", sum: "{a} and {b}" }\n',
      'page: { title: "{name}", sum: "{a} et {c}", gone: Parti }\n',
    );
    expect(untranslated.words.map(({ code, line, column }) => [code, line, column])).toEqual([
      ['other-slots', 1, expect.any(Number)],
      ['translation-left-over', 1, expect.any(Number)],
    ]);
    expect(told.words['page.sum']).toBe('{a} and {b}');
    expect(told.words).not.toHaveProperty('page.gone');
  });

  it('may take the slots in another order', () => {
    const { untranslated } = words('page: { sum: "{a} and {b}" }\n', 'page: { sum: "{b}, puis {a}" }\n');
    expect(untranslated.words).toEqual([]);
  });
});
