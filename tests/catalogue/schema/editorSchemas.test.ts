import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import Ajv from 'ajv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readOrigin } from '../../../src/catalogue/reading/entry.ts';
import { placeFile } from '../../../src/catalogue/reading/folders.ts';
import { decodeSource } from '../../../src/catalogue/reading/sourceText.ts';
import {
  editorSchema,
  FILE_KINDS,
  type FileKind,
  fileSchema,
} from '../../../src/catalogue/schema/editorSchemas.ts';
import { parseWith } from '../../../src/catalogue/schema/parse.ts';
import { shopFolder } from '../faultyShop.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const demo = join(root, 'content');
const usd = { code: 'USD', digits: 2 };

// Formats are hints to an editor; what is refused must follow from the rest.
const ajv = new Ajv({
  allErrors: true,
  strict: true,
  allowUnionTypes: true,
  formats: { date: true, 'color-hex': true },
});
const validators = Object.fromEntries(
  FILE_KINDS.map((kind) => [kind, ajv.compile(editorSchema(kind, usd))]),
) as unknown as Record<FileKind, ReturnType<typeof ajv.compile>>;

interface ContentFile {
  readonly path: string;
  readonly kind: FileKind;
  readonly text: string;
  readonly raw: unknown;
}

function kindOf(path: string): FileKind {
  if (path.startsWith('translations/'))
    return `translation-${placeFile('', path.split('/').slice(2).join('/')).kind}` as FileKind;
  const folder = path.split('/').filter((part) => part !== 'lenses')[0] ?? '';
  const kind = FILE_KINDS.find((one) => folder === one || folder === `${one}s` || folder === `${one}.yaml`);
  if (kind === undefined) throw new Error(`${path} has no schema`);
  return kind;
}

function filesOf(folder: string): ContentFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(md|yaml)$/.test(entry.name))
    .map((entry) => {
      const path = relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/');
      return contentFile(path, kindOf(path), readFileSync(join(folder, path)));
    });
}

function contentFile(path: string, kind: FileKind, bytes: Uint8Array): ContentFile {
  const decoded = decodeSource({ path, bytes });
  if (!decoded.ok) throw new Error(`${path} cannot be read`);
  return { path, kind, text: decoded.source.text, raw: readOrigin(decoded.source).raw };
}

const demoFiles = filesOf(demo);
const mappings = ['frames', 'prices'].map((name) => {
  const path = join(root, 'tests/fixtures/import', `${name}.yaml`);
  return contentFile(path, 'mapping', readFileSync(path));
});
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const costs = /```yaml\n((?:#.*\n)?frames:[^`]*)```/.exec(readme)?.[1] ?? '';
const beside = [...mappings, contentFile('costs.yaml', 'costs', new TextEncoder().encode(costs))];
const files = [...demoFiles, ...filesOf(shopFolder), ...beside];

/** Where the editor underlines something; an unknown field is named itself. */
function marks(kind: FileKind, raw: unknown): string[] {
  const validate = validators[kind];
  validate(raw);
  return (validate.errors ?? []).map(({ instancePath, params }) =>
    [instancePath, params['additionalProperty'] ?? params['missingProperty'] ?? ''].join(' ').trim(),
  );
}

describe('the schema for editors', () => {
  it('finds nothing wrong in any file of the demonstration shop', () => {
    expect(demoFiles.length).toBeGreaterThan(120);
    expect(costs).toContain('parcel:');
    expect(
      files.map(({ path, kind, raw }) => [path, marks(kind, raw)]).filter(([, found]) => found?.length),
    ).toEqual([]);
  });

  it('is named at the head of every file of the demonstration shop (npm run schemas puts it there)', () => {
    const wrong = demoFiles.filter(({ path, kind, text }) => {
      const named = /^(?:---\n)?# yaml-language-server: \$schema=(\S+)\n/.exec(text)?.[1] ?? '';
      return join(demo, dirname(path), named) !== join(demo, '.schemas', `${kind}.json`);
    });
    expect(wrong.map(({ path }) => path)).toEqual([]);
    for (const { text, kind } of beside) expect(text).toContain(`content/.schemas/${kind}.json\n`);
  });

  it.each([
    ['shop.yaml', 'currency: USD', 'currency: dollars', '/currency'],
    ['shop.yaml', 'amount: "8.50"', 'amount: 8.50', '/shipping/0/amount'],
    ['frames/dunlin.md', 'price: "149.00"', 'price: "149.0"', '/price'],
    ['frames/dunlin.md', 'massG: 22', 'massG: heavy', '/massG'],
    ['frames/dunlin.md', 'rimDepthMm:', 'rimDepth:', 'rimDepth'],
    ['frames/dunlin.md', 'ed: 48.5', 'ed: 4', '/sizes/0/ed'],
    ['outlines/ring-44.yaml', 'radiiMm:', 'radii:', 'radii'],
    ['lenses/designs/progressive.md', 'kind: progressive', 'kind: progresive', '/kind'],
    ['lenses/materials/tough.md', 'abbe:', 'abe:', 'abe'],
    ['lenses/tints/brown.md', 'kind: solid', 'kind: brown', '/kind'],
    ['lenses/coatings/hard.md', 'hard: true', 'hard: yes', '/hard'],
    ['promotions/autumn.md', 'percent: "10"', 'percent: "10%"', '/gift/percent'],
    ['promotions/autumn.md', 'starts: 2026-11-01', 'starts: 1 November', '/starts'],
    ['pages/returns.md', 'menu: 1', 'menu: first', '/menu'],
    ['words/en/page.yaml', 'page:', 'page: [1]\nother:', '/page'],
  ])('underlines a slip in %s: %s as %s', (path, passage, by, place) => {
    const text = readFileSync(join(shopFolder, path), 'utf8').replaceAll('\r\n', '\n');
    expect(text).toContain(passage);
    const decoded = decodeSource({ path, bytes: new TextEncoder().encode(text.replace(passage, by)) });
    if (!decoded.ok) throw new Error('not read');
    expect(marks(kindOf(path), readOrigin(decoded.source).raw)).toContain(place);
  });

  it.each([
    ['translations/fr-CA/frames/dunlin.md', 'inTheBox: [', 'box: [', 'box'],
    ['translations/fr-CA/shop.yaml', 'tagline: ', 'tagline: 3 #', '/tagline'],
    ['costs.yaml', '"48.00"', '"48"', '/frames/dunlin'],
    ['frames.yaml', 'Lens height: b', 'Lens height: height', '/columns/Lens height'],
  ])('underlines one in %s: %s as %s', (path, passage, by, place) => {
    const found = files.find((file) => file.path.endsWith(path));
    expect(found?.text).toContain(passage);
    const { kind, text } = found as ContentFile;
    const spoiltText = new TextEncoder().encode(text.replace(passage, by));
    expect(marks(kind, contentFile(found?.path ?? '', kind, spoiltText).raw)).toContain(place);
  });

  it('says of every field what it means', () => {
    const dumb: string[] = [];
    const walk = (part: Record<string, unknown>, path: string): void => {
      for (const [name, field] of Object.entries((part['properties'] ?? {}) as Record<string, typeof part>)) {
        const description = String(field['description'] ?? '');
        if (description === '' || description.startsWith('Write')) dumb.push(`${path}.${name}`);
        walk(field, `${path}.${name}`);
      }
      for (const branch of (part['anyOf'] ?? []) as (typeof part)[]) walk(branch, path);
      if (part['items'] && !Array.isArray(part['items'])) walk(part['items'] as typeof part, `${path}.*`);
    };
    for (const kind of FILE_KINDS) walk(editorSchema(kind, usd) as Record<string, unknown>, kind);
    expect(dumb).toEqual([]);
  });
});

/** Every path into a value. */
function* paths(value: unknown, path: (string | number)[] = []): Generator<(string | number)[]> {
  if (path.length > 0) yield path;
  if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value))
      yield* paths(inner, [...path, Array.isArray(value) ? Number(key) : key]);
}

const VALUES: readonly unknown[] = [
  null,
  true,
  'text',
  '',
  '  ',
  0,
  -5,
  0.5,
  3,
  1e9,
  '149.00',
  '149',
  '149.0',
  '-1.00',
  '100',
  '100.5',
  '2026-11-25',
  '2026-2-3',
  [],
  {},
  ['a', 'b'],
  [1, 2],
  [2, 1],
  'all',
  '#12345',
  '#ABCDEF',
  '{slot}',
  '{ }',
  'https://a.example',
];

/** A copy in which the value at `path` is another, is gone, or has an unknown field beside it. */
function spoilt(raw: unknown, path: readonly (string | number)[], to: unknown): unknown {
  const copy = structuredClone(raw);
  let holder = copy as Record<string | number, unknown>;
  for (const part of path.slice(0, -1)) holder = holder[part] as typeof holder;
  const last = path.at(-1) as string | number;
  if (to !== undefined) holder[last] = to;
  else if (Array.isArray(holder)) holder.splice(Number(last), 1);
  else delete holder[last];
  if (to === 'text' && !Array.isArray(holder)) holder['strange'] = 1;
  return copy;
}

/** What no schema for editors can say: an order of two numbers, a leap year, a checksum. */
const BEYOND = /the smaller first|a day of the calendar|an age public key/;

describe('law: an editor and npm run check', () => {
  it('agree on every file with one value changed', () => {
    const places = files.flatMap((file, at) => [...paths(file.raw)].map((path) => ({ at, path })));
    const change = fc.tuple(fc.constantFrom(...places), fc.constantFrom(undefined, ...VALUES));
    let refused = 0;
    fc.assert(
      fc.property(change, ([{ at, path }, to]) => {
        const { kind, raw: whole } = files[at] as ContentFile;
        const raw = spoilt(whole, path, to);
        const read = parseWith(fileSchema(kind, usd), raw);
        const found = marks(kind, raw);
        if (read.ok) expect(found).toEqual([]);
        else if (!read.issues.every(({ expected }) => BEYOND.test(expected))) expect(found).not.toEqual([]);
        if (!read.ok) refused += 1;
      }),
      { numRuns: 3000 },
    );
    expect(refused).toBeGreaterThan(500);
  });
});
