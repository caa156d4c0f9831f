import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/load.ts';
import { create } from '../../../src/commands/creating/create.ts';
import { RECIPES } from '../../../src/commands/creating/recipes.ts';

const demo = fileURLToPath(new URL('../../../content', import.meta.url));
const shop = join(mkdtempSync(join(tmpdir(), 'create-')), 'content');
cpSync(demo, shop, { recursive: true });
afterAll(() => rmSync(join(shop, '..'), { recursive: true, force: true }));

/** What is told of `KIND --flag "its value" ...`; the lines typed answer what is asked. */
async function make(line: string, typed: readonly string[] | null = null): Promise<string> {
  const [kind, ...words] = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain);
  const recipe = RECIPES.find(({ name }) => name === kind);
  if (recipe === undefined) throw new Error(`There is no recipe ${kind}.`);
  const flags = words.flatMap((word, at) => (word?.startsWith('--') ? [[word.slice(2), words[at + 1]]] : []));
  const lines = [...(typed ?? [])];
  const said: string[] = [];
  const asked = {
    ask: async (prompt: string) => {
      said.push(prompt);
      return lines.shift() ?? null;
    },
    tell: (text: string) => said.push(text),
  };
  const told = await create(recipe, shop, Object.fromEntries(flags), typed === null ? null : asked);
  return [...said, told].join('\n').replaceAll(`${shop}/`, 'content/');
}

const text = (path: string) => readFileSync(join(shop, path), 'utf8');
const filesOf = () =>
  readdirSync(shop, { recursive: true, encoding: 'utf8' })
    .filter((path) => statSync(join(shop, path)).isFile())
    .map((path) => [path, text(path)]);

const FRAME =
  '--summary "Steel: light" --material Steel --colourway "Night blue" --collection saltmarsh --b 38.5';

describe('what is created', () => {
  writeFileSync(
    join(shop, 'pages/tide.md'),
    '---\ntitle: "Tide: high"\ndescription: When we open.\n---\n\nAt six.\n',
  );

  it.each([
    ['frames/little-tern.md', `frame --model "Little tern" --price 149 --a 51 --dbl 19 ${FRAME}`],
    [
      'frames/gull.md',
      `frame --model X --id gull --price 149.00 --a 51.4 --dbl 19 --mounting drilled ${FRAME}`,
    ],
    ['frames/1984.md', `frame --model 1984 --price 149.00 --a 51.4 --dbl 19 --mounting grooved ${FRAME}`],
    ['frames/dunlin.md', 'colourway --frame dunlin --name Kelp --front #445544'],
    [
      'lenses/designs/reader.md',
      'design --name Reader --summary "For a trial" --price 20 --kind progressive',
    ],
    ['lenses/designs/top.md', 'design --name Top --summary "For a trial" --price 20 --kind bifocal'],
    ['lenses/designs/desk.md', 'design --name Desk --summary "For a trial" --price 20 --kind office'],
    ['lenses/designs/one.md', 'design --name One --summary "For a trial" --price 20 --kind single-vision'],
    [
      'lenses/materials/plastic-1-56.md',
      'material --name "Plastic 1.56" --summary S --price 20 --nd 1.556 --abbe 38 --density 1.28 --designs office',
    ],
    ['lenses/tints/dusk.md', 'tint --name Dusk --summary "For a trial" --price 20 --kind photochromic'],
    ['lenses/tints/fade.md', 'tint --name Fade --summary "For a trial" --price 20 --kind gradient'],
    ['lenses/tints/shine.md', 'tint --name Shine --summary "For a trial" --price 20 --kind mirror'],
    ['lenses/coatings/harder.md', 'coating --name Harder --summary "For a trial" --price 20'],
    ['lenses/coatings/plain.md', 'coating --name Plain --summary "For a trial" --price 20 --faces none'],
    [
      'promotions/spring.md',
      'promotion --title Spring --sentence "Ten off" --percent 10 --starts 2027-03-01 --collections harbour,small',
    ],
    ['promotions/five.md', 'promotion --title Five --sentence "Five off" --gift amount --amount 5 --on pair'],
    [
      'promotions/lenses.md',
      'promotion --title Lenses --sentence "With lenses" --gift lenses --design single-vision --material polycarbonate',
    ],
    ['promotions/post.md', 'promotion --title Post --sentence "Free parcel" --gift shipping --code POST'],
    ['frames/dunlin.md', 'size --frame dunlin --a 50 --b 36 --dbl 20'],
    ['outlines/round-40.yaml', `outline --id round-40 --eye left --radii "${Array(36).fill(20).join(' ')}"`],
    ['shop.yaml', 'collection --name "Low water" --summary "Frames for a trial"'],
    ['translations/fr-CA/pages/tide.md', 'translation --language fr-CA --of pages/tide'],
    ['costs.yaml', 'costs --work 15'],
    ['pages/bench.md', 'page --title Bench --description "Where we work" --text "Come in."'],
  ])('passes every check: %s', async (path, line) => {
    expect(await make(line)).toContain(path);
  });

  it('leaves a shop without faults, its files commented and wired to their schemas', () => {
    expect(loadCatalogue(shop).ok).toBe(true);
    expect(text('frames/little-tern.md')).toMatch(
      /^---\n# yaml-language-server: \$schema=\.\.\/\.schemas\/frame\.json\n# Name that the shopper reads\.\nmodel: Little tern\n/,
    );
    expect(text('lenses/tints/dusk.md')).toContain('$schema=../../.schemas/tint.json\n');
    expect(text('pages/bench.md')).toMatch(/\n---\n\nCome in\.\n$/);
    const added = /^ {2}- (?:code: kelp|id: 50-20)\n(?: {4}.*\n)+/gm;
    expect(text('frames/dunlin.md').replace(added, '')).toBe(
      readFileSync(join(demo, 'frames/dunlin.md'), 'utf8'),
    );
    expect(text('../costs.yaml')).toMatch(/^# yaml-language-server: .*costs\.json\n# By id/);
    expect(text('../costs.yaml')).toContain('\n  avocet: "0.00"\n');
    expect(text('translations/fr-CA/pages/tide.md')).toMatch(
      /^---\n# yaml.*translation-pages\.json\n# The texts of pages\/tide\.md .*\n# title: "Tide: high"\n# description: When we open\.\n---\n$/,
    );
  });

  it('asks again for nothing but what is wrong, given or found by the whole shop', async () => {
    const line =
      'promotion --title Late --id late --sentence "Ten off" --percent 10 --gift half --starts 2027-03-09 --ends 2027-03-01 --code "" --on frame --collections ""';
    const said = await make(line, ['percent', '2027-03-21']);
    expect(said).toContain('found "half"');
    expect(said.match(/^(?:What it gives|Last day|First day).*: $/gm)).toHaveLength(2);
    expect(said).toContain('Exchange starts and ends');
    expect(text('promotions/late.md')).toContain('ends: 2027-03-21');
  });

  it('tells how to go on where asking ends early', async () => {
    const before = filesOf();
    const left = make('page --description "What we use"', ['Our "tools"', 'our-things']);
    await expect(left).rejects.toThrow(
      /To go on from here:\nnpm run new -- page --description='What we use' --title='Our "tools"' --id=our-things --shop=/,
    );
    expect(filesOf()).toEqual(before);
  });

  it('is asked for line by line, and again where an answer will not do', async () => {
    expect(
      await make('page', ['Our tools', '', 'What we use', 'first', '"3"', 'Pliers.']),
    ).toMatchInlineSnapshot(`
      "Title: 
      Its id: the name of the file in content/pages, and part of its address [our-tools]: 
      One sentence for search results: 
      Place in the menu, from 1; nothing keeps it out of the menu [none]: 
        Expected a whole number from 1 to 100, found the text "first". Write digits and a point only.
      Place in the menu, from 1; nothing keeps it out of the menu [none]: 
      Its first paragraph: 
      content/pages/our-tools.md is written.
      What is left to do:
        - Go on writing below the second line ---, in Markdown.
        - npm run dev shows it at /our-tools/"
    `);
    expect(text('pages/our-tools.md')).toContain('\nmenu: 3\n');
  });
});

describe('nothing is created', () => {
  async function refusal(line: string): Promise<string> {
    const before = filesOf();
    const error = await make(line).then(
      () => null,
      (refused: unknown) => refused,
    );
    expect(filesOf()).toEqual(before);
    return error instanceof Error ? error.message : 'not refused';
  }

  it('over what is there', async () => {
    expect(await refusal('page --title Returns --description D --text T')).toBe(
      '--id: There is a page "returns" already.\nNothing was written.',
    );
    expect(await refusal('colourway --frame dunlin --name Mudflat --front #445544')).toContain(
      'The frame has a colourway "mudflat" already.',
    );
  });

  it('when answers are missing or wrong, and all of them are named', async () => {
    const line = 'frame --model X --id Xy --collection harbor --price ten --a 51mm --b 38 --dbl 19';
    expect(await refusal(`${line} --summary S --colourway C`)).toMatchInlineSnapshot(`
      "--id: Expected small letters a-z, digits and hyphens, found "Xy".
      --collection: Expected harbour, saltmarsh, breakwater, small, workshop or low-water, found "harbor". Did you mean harbour?
      --price: Expected a price in USD with 2 digits after the point, such as "149.00", found the text "ten". Write digits and a point only.
      --material is missing: What the front is made of.
      --a: Expected a number from 25 to 80 mm, found the text "51mm". Write 51, without a unit.
      --ed is missing: ED, twice the longest radius from the middle of the box in mm.
      Nothing was written."
    `);
  });

  it('with an ED that no outline of the family has in its box', async () => {
    expect(await refusal(`frame --model Skua --price 99 --a 51 --dbl 19 --ed 90 ${FRAME}`)).toMatch(
      /--ed: Expected \d+\.\d to \d+\.\d mm, which panto reaches in a box of 51 by 38\.5; found 90\./,
    );
  });

  it('when the shop refuses, and the answers are told as a command', async () => {
    const told = await refusal(
      'promotion --title T --sentence "Five #1" --percent 5 --starts 2027-03-09 --ends 2027-03-01',
    );
    expect(told).toContain("--title=T --id=t --sentence='Five #1'");
  });

  it('from answers that do not go together', async () => {
    expect(await refusal('promotion --title T --sentence S --gift shipping --percent 10')).toContain(
      '--percent does not go with the other answers.',
    );
  });
});

describe('in a shop with a fault elsewhere', () => {
  it('it is created all the same, and the fault is mentioned', async () => {
    const knot = join(shop, 'frames/knot.md');
    writeFileSync(knot, readFileSync(knot, 'utf8').replace('massG:', 'mass:'));
    const told = await make('page --title Later --description D --text T');
    expect(told).toMatch(/The shop had faults before, and has them still \(\d\): npm run check$/);
  });

  it('a material is made in a design whose list is closed', async () => {
    rmSync(join(shop, 'frames/knot.md'));
    for (const name of readdirSync(join(shop, 'lenses/designs'))) {
      const path = join(shop, 'lenses/designs', name);
      writeFileSync(
        path,
        readFileSync(path, 'utf8').replace('materials: all', 'materials: [standard-plastic]'),
      );
    }
    await make('material --name Other --summary S --price 20 --nd 1.6 --abbe 38 --density 1.28');
    expect(text('lenses/designs/bifocal-28.md')).toMatch(/\nmaterials: \[.*, other\]\n/);
  });
});
