import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { say } from '../../src/catalogue/words.ts';
import { fieldName } from '../../src/configurator/fieldName.ts';
import { type Entries, FIELDS, type Field } from '../../src/configurator/fields.ts';
import { readEntries } from '../../src/configurator/readEntries.ts';
import { pairFaults } from '../../src/quote/plausible.ts';
import { DATE, frameOf, shop } from './shop.ts';

const on = { frame: frameOf('sanderling'), data: shop, date: DATE };
const read = (entries: Entries) => readEntries(entries, on);
const faultsAt = (entries: Entries) =>
  read(entries).faults.map(({ field, missing }) => `${field}${missing ? ' missing' : ''}`);

/** Entries that cannot be meant, and the fields that say so. */
const WRONG: readonly (readonly [what: string, entries: Entries, at: readonly string[]])[] = [
  [
    'a cylinder without its axis',
    { 'right.sphere': '-3.25', 'right.cylinder': '-0.75' },
    ['right.axis missing'],
  ],
  ['an axis without a cylinder', { 'right.sphere': '-3.25', 'right.axis': '90' }, ['right.axis']],
  ['an axis of 181', { 'left.sphere': '-1', 'left.cylinder': '-1', 'left.axis': '181' }, ['left.axis']],
  ['an axis of 45.5', { 'left.sphere': '-1', 'left.cylinder': '-1', 'left.axis': '45.5' }, ['left.axis']],
  ['a sphere between the steps', { 'right.sphere': '-3.30' }, ['right.sphere']],
  ['a sphere without its sign', { 'right.sphere': '3.25' }, ['right.sphere']],
  ['a sphere that lost its point', { 'right.sphere': '-325' }, ['right.sphere']],
  ['a cylinder without a sphere', { 'right.cylinder': '-1', 'right.axis': '5' }, ['right.sphere missing']],
  ['words for an add', { 'left.add': 'two' }, ['left.add']],
  ['a PD of 6.2', { 'pd.mode': 'both', 'pd.both': '6.2' }, ['pd.both']],
  ['a PD of one eye that lost its place', { 'pd.right': '3.15' }, ['pd.right', 'pd.left missing']],
  ['a PD of one eye', { 'pd.right': '31' }, ['pd.left missing']],
  ['a near PD in metres', { 'pd.mode': 'both', 'nearPd.both': '0.06' }, ['nearPd.both']],
  ['a height of 200', { 'fittingHeight.right': '200', 'fittingHeight.left': '20' }, ['fittingHeight.right']],
  ['a segment height in words', { 'segmentHeight.left': 'low' }, ['segmentHeight.left']],
  ['a prism without a base', { 'right.prism1.amount': '2' }, ['right.prism1.base missing']],
  ['a prism of 50', { 'left.prism1.amount': '50' }, ['left.prism1.amount', 'left.prism1.base missing']],
  ['a base without a prism', { 'left.prism2.base': 'up' }, ['left.prism2.amount missing']],
  [
    'a second prism that is too strong',
    { 'right.prism2.amount': '90', 'right.prism2.base': 'in' },
    ['right.prism2.amount'],
  ],
  ['a vertex distance of 120', { vertexTested: '120' }, ['vertexTested']],
  ['a tilt of 80', { tilt: '80' }, ['tilt']],
  ['a face form of 90', { faceForm: '90' }, ['faceForm']],
  ['a day that is no date', { issued: 'June' }, ['issued']],
];

describe('readEntries', () => {
  it.each(WRONG)('points at %s', (_, entries, at) => {
    expect(faultsAt(entries)).toEqual(at);
  });

  it('says what is expected of every fault', () => {
    for (const [, entries] of WRONG)
      for (const { message, expected } of read(entries).faults) {
        expect(message).not.toBe('');
        expect(expected).not.toBe('');
      }
  });

  it('has a name for every field that can be faulty', () => {
    const t = (key: string) => say(shop.words, `worksheet.${key}`);
    for (const [, entries] of WRONG)
      for (const { field } of read(entries).faults)
        if (field !== null) expect(fieldName(t, field)).not.toBe(field);
  });

  it.each([
    ['right.sphere', '-225', ['\u22122.25']],
    ['right.sphere', '225', ['\u22122.25', '+2.25']],
    ['left.sphere', '+1025', ['+10.25']],
    ['left.add', '225', ['2.25']],
    ['left.add', '75', ['0.75']],
    ['right.sphere', '2.25', ['\u22122.25', '+2.25']],
    ['right.sphere', '-12', undefined],
    ['right.sphere', '-233', undefined],
    ['right.sphere', '-9999', undefined],
  ] as const)('offers what may have been meant by %s %s, and puts nothing in', (at, text, offers) => {
    const { faults, request } = read({ [at]: text });
    expect(faults.find(({ field }) => field === at)?.offers).toEqual(offers);
    if (offers !== undefined) {
      const [eye = '', name = ''] = at.split('.');
      expect(request.pairs[0]?.prescription?.[eye as 'right' | 'left']).not.toHaveProperty(name);
      for (const offer of offers) expect(faultsAt({ [at]: offer })).toEqual([]);
    }
  });

  it('offers a cylinder its point, with its axis beside it', () => {
    const faults = read({ 'right.sphere': '-1', 'right.cylinder': '75', 'right.axis': '90' }).faults;
    expect(faults).toMatchObject([{ field: 'right.cylinder', offers: ['\u22120.75', '+0.75'] }]);
  });

  it('suggests 62 for a PD of 6.2', () => {
    const [fault] = read({ 'pd.mode': 'both', 'pd.both': '6.2' }).faults;
    expect(fault?.expected).toContain('did you mean 62?');
  });

  it('takes an axis of 0, plano and words for no cylinder without a fault', () => {
    const { faults, request } = read({
      'right.sphere': 'pl',
      'right.cylinder': '-1,00',
      'right.axis': '0',
      'left.sphere': '+2',
      'left.cylinder': 'DS',
    });
    expect(faults).toEqual([]);
    expect(request.pairs[0]?.prescription).toEqual({
      right: { sphere: 0, cylinder: -1, axis: 0 },
      left: { sphere: 2, cylinder: 0 },
    });
  });

  it('asks nothing of a prescription when none is wanted, and keeps what was typed', () => {
    const entries = { use: 'none', 'right.sphere': 'what?' };
    expect(read(entries).faults).toEqual([]);
    expect(read(entries).request.pairs[0]?.prescription).toBeNull();
  });

  it('keeps both forms of the PD and sends the one that is switched to', () => {
    const entries: Entries = { 'pd.both': '63', 'pd.right': '31', 'pd.left': '31.5' };
    expect(read({ ...entries, 'pd.mode': 'both' }).request.pairs[0]?.fit?.pd).toBe(63);
    expect(read({ ...entries, 'pd.mode': 'each' }).request.pairs[0]?.fit?.pd).toEqual({
      right: 31,
      left: 31.5,
    });
  });

  it('asks nobody to choose: every choice has one that fits the frame', () => {
    for (const frame of shop.frames) {
      const { choices } = readEntries({}, { ...on, frame });
      const material = shop.materials.find(({ id }) => id === choices.material);
      expect(material?.mountings).toContain(frame.mounting.kind);
    }
  });

  it('changes the design with the use until the visitor chooses one', () => {
    const uses = (entries: Entries) =>
      shop.designs.find(({ id }) => id === read(entries).choices.design)?.uses;
    for (const use of ['distance', 'near', 'all', 'none'] as const) expect(uses({ use })).toContain(use);
    expect(read({ use: 'all', design: 'single-vision' }).choices.design).toBe('single-vision');
  });

  const anything = fc.oneof(
    fc.constantFrom(
      '',
      '-3.25',
      '2',
      '+1.50',
      '0',
      '181',
      '62',
      '6.2',
      'in',
      'up',
      'both',
      'yes',
      'abc',
      '999',
    ),
    fc.string({ maxLength: 6 }),
  );
  const anyEntries = fc
    .array(fc.tuple(fc.constantFrom(...FIELDS), anything), { maxLength: 20 })
    .map((pairs): Entries => Object.fromEntries(pairs));

  it('loses no fault: each lies at a field, and what is sent has none', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { faults, request } = read(entries);
        for (const { field } of faults) expect(field).not.toBeNull();
        const [pair] = request.pairs;
        expect(pair && pairFaults(pair, 'pairs.0')).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  it('never changes what was typed', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const before = JSON.stringify(entries);
        read(entries);
        expect(JSON.stringify(entries)).toBe(before);
      }),
    );
  });

  it('reads each eye alike', () => {
    const mirrored = (entries: Entries): Entries =>
      Object.fromEntries(
        Object.entries(entries).map(([field, text]) => [
          field.replace(/right|left/, (eye) => (eye === 'right' ? 'left' : 'right')),
          text,
        ]),
      );
    const swapped = (field: Field | null) =>
      field?.replace(/right|left/, (eye) => (eye === 'right' ? 'left' : 'right')) ?? null;
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const one = read(entries)
          .faults.map(({ field }) => swapped(field))
          .sort();
        const other = read(mirrored(entries))
          .faults.map(({ field }) => field)
          .sort();
        expect(other).toEqual(one);
      }),
    );
  });
});

describe('an untouched worksheet', () => {
  const opensWith = (id: string, date: string, data = shop) =>
    readEntries({}, { frame: frameOf(id), data, date }).choices.material;

  it('opens with the lenses that are included, where they can go in this frame', () => {
    expect(opensWith('dotterel', DATE)).toBe('polycarbonate');
    const unsafe = shop.materials.map((one) =>
      one.id === 'polycarbonate' ? { ...one, impactResistant: false } : one,
    );
    expect(opensWith('dotterel', DATE, { ...shop, materials: unsafe })).toBe('urethane-1-53');
    expect(opensWith('sanderling', DATE)).toBe('standard-plastic');
  });

  it('opens with the first that fits before the offer begins, after it ends, or where it asks for a code', () => {
    const offers = [{ starts: '2026-11-26' }, { ends: '2026-11-24' }, { code: 'SMALL' }] as const;
    for (const offer of offers) {
      const promotions = shop.promotions.map((one) => ({ ...one, ...offer }));
      expect(opensWith('dotterel', DATE, { ...shop, promotions })).toBe('urethane-1-53');
    }
  });
});
