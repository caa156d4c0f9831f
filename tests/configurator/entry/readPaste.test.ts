import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPaste } from '../../../src/configurator/entry/readPaste.ts';
import { writePrescription } from '../../../src/optics/notation/write.ts';

const quarter = (from: number, to: number) =>
  fc.integer({ min: from * 4, max: to * 4 }).map((quarters) => quarters / 4);

const eye = fc.record({
  power: fc
    .record({
      sphereD: quarter(-20, 20),
      cylinderD: quarter(-6, 6),
      axisDeg: fc.integer({ min: 1, max: 180 }),
    })
    .map((power) => (power.cylinderD === 0 ? { ...power, axisDeg: 180 } : power)),
  addD: fc.option(quarter(1, 3)),
  prisms: fc.constant([]),
});

const entriesOf = (text: string) => readPaste(text).entries;
const marked = (text: string) => readPaste(text).marks.map(({ start, end }) => text.slice(start, end));

describe('a pasted prescription', () => {
  it('is read whole from what a prescription is written as', () => {
    fc.assert(
      fc.property(eye, eye, (right, left) => {
        const paste = readPaste(writePrescription({ right, left }));
        expect(paste.marks).toEqual([]);
        expect(paste.eyes).toEqual({ right, left });
      }),
    );
  });

  it('fills every field of an eye, so that nothing of another prescription is left in it', () => {
    expect(entriesOf('OD -2.25 DS\nOS plano -0.50 x 5 add 1.50 1.5 BI 0.5 BU')).toEqual({
      'right.sphere': '\u22122.25',
      'right.cylinder': '',
      'right.axis': '',
      'right.add': '',
      'right.balance': '',
      'right.prism1.amount': '',
      'right.prism1.base': '',
      'right.prism2.amount': '',
      'right.prism2.base': '',
      'left.sphere': '0.00',
      'left.cylinder': '\u22120.50',
      'left.axis': '5',
      'left.add': '+1.50',
      'left.balance': '',
      'left.prism1.amount': '1.5',
      'left.prism1.base': 'in',
      'left.prism2.amount': '0.5',
      'left.prism2.base': 'up',
    });
  });

  it('keeps eighths of a dioptre', () => {
    expect(entriesOf('OD -2.125 -0.375 x 90')['right.sphere']).toBe('\u22122.125');
  });

  it('splits a prism in degrees into the two that the form has', () => {
    // 5 at atan(3/4): base out 4 of the left eye, up 3.
    const {
      'left.prism1.amount': across,
      'left.prism1.base': base,
      ...rest
    } = entriesOf('OS plano 5 @ 36.87');
    expect([across, base, rest['left.prism2.amount'], rest['left.prism2.base']]).toEqual([
      '4',
      'out',
      '3',
      'up',
    ]);
  });

  it('reads PD, near PD, vertex distance and date beside the powers', () => {
    expect(entriesOf('OD -1.00\nOS -1.00\nPD 31.5/32 BVD 12\nissued 2026-03-01')).toMatchObject({
      'pd.mode': 'each',
      'pd.right': '31.5',
      'pd.left': '32',
      vertexTested: '12',
      issued: '2026-03-01',
    });
    expect(entriesOf('OD -1.00\nOS -1.00\nPD: 63/60 mm')).toMatchObject({
      'pd.mode': 'both',
      'pd.both': '63',
      'nearPd.both': '60',
    });
  });

  it('does not take a birthday for the date of the prescription', () => {
    expect(entriesOf('DOB 1980-02-03\nOD -1.00\nOS -1.00')['issued']).toBeUndefined();
  });

  it('leaves out names and headings, and says which', () => {
    const text = 'Patient: A. Example 12\n  SPH CYL AXIS\nOD -2.00 -1.00 x 90\nOS -2.00';
    expect(marked(text)).toEqual(['Patient: A. Example 12', 'SPH CYL AXIS']);
    expect(readPaste(text).eyes.left?.power?.sphereD).toBe(-2);
  });
});

describe('a prescription written in French', () => {
  it.each([
    'OD \u22122,25 (\u22120,75 \u00e0 170\u00b0) add 1,50\nOG \u22122,00 (10\u00b0 \u22120,50) addition 1,50\nDP 63',
    '\u0152il droit : -2,25 (170\u00b0 -0,75)\n\u0152il gauche : -2,00 (10\u00b0 -0,50)\nAddition : 1,50\n\u00c9P : 63 mm',
    'Nom : Vall\u00e9e\nOD -2,25 (-0,75 \u00d7 170)\nOG -2,00 (-0,50 x 10)\nAdd 1,50\nEP 63',
  ])('is read whole from %j', (text) => {
    const { entries, marks } = readPaste(text);
    expect(marks.filter(({ kind }) => kind === 'fault')).toEqual([]);
    expect(entries).toMatchObject({
      ...{
        'right.sphere': '\u22122.25',
        'right.cylinder': '\u22120.75',
        'right.axis': '170',
        'right.add': '+1.50',
      },
      ...{
        'left.sphere': '\u22122.00',
        'left.cylinder': '\u22120.50',
        'left.axis': '10',
        'left.add': '+1.50',
      },
      'pd.both': '63',
    });
  });

  it('has each PD, for near and far, and the left eye alone where the right is not understood', () => {
    const { entries, unread } = readPaste('OD 2,25\nOG -1,00\nDP 31,5/32\nEP de pr\u00e8s 60');
    expect(unread).toEqual(['right']);
    expect(entries).toMatchObject({ 'left.sphere': '\u22121.00', 'pd.right': '31,5', 'nearPd.both': '60' });
  });
});

describe('a typing error', () => {
  const wrong = 'OD -2.25 -0.75 x 19O add +1.50\nOS -2.00 -0.50 x 10\nadd +2.00';

  it('is marked with the whole number that it spoils', () => {
    expect(marked(wrong)).toEqual(['19O']);
  });

  it('leaves its eye alone and lets the other be read, with what is said for both', () => {
    const { eyes, entries, unread } = readPaste(wrong);
    expect(eyes.right).toBeNull();
    expect(unread).toEqual(['right']);
    expect(Object.keys(entries).some((field) => field.startsWith('right.'))).toBe(false);
    expect(entries).toMatchObject({ 'left.sphere': '\u22122.00', 'left.add': '+2.00' });
  });

  it.each([
    ['OD -2.25 -0.75 x l70\nOS -2.00', 'l', 'axis'],
    ['OD 2.25\nOS -2.00', '2.25', 'sphere-sign'],
    ['OD -2.25 -0.75 x 190\nOS -2.00', '190', 'axis-range'],
    ['OD -225\nOS -2.00', '-225', 'sphere-range'],
    ['OD -2.25 -0.75\nOS -2.00', '', 'axis'],
  ])('in %j is told where it stands', (text, found, expected) => {
    const { marks, entries } = readPaste(text);
    const [mark] = marks;
    expect(text.slice(mark?.start, mark?.end).trim()).toBe(found);
    expect(mark?.expected?.code).toBe(expected);
    expect(entries['left.sphere']).toBe('\u22122.00');
  });

  it('in an eye that is named twice leaves both ways of it unread', () => {
    const { eyes, unread } = readPaste('OD -2.00\nOD -2.50\nOS -1.00');
    expect(eyes.right).toBeNull();
    expect(unread).toEqual(['right']);
  });
});

describe('OU beside an add or a PD', () => {
  it.each([
    'OD \u20131.50 \u20130.50 \u00d7 5\nOS \u221e \u20130.25 \u00d7 175\u00b0\nAdd 1.75 OU PD 62',
    'OD \u20131.50 \u20130.50 \u00d7 5 OS \u221e \u20130.25 \u00d7 175\u00b0 Add 1.75 OU PD 62 OU',
    'OD -1.50 DS -0.50 DC x 5 OS plano -0.25 x 175 OU PD 62\nOU add 1.75',
    'PD OU 62\nOD -1.50 -0.50 x 5\nOS pl -0.25 x 175\nadd OU 1.75',
  ])('says that it is of both eyes: %j', (text) => {
    const { entries, marks } = readPaste(text);
    expect(marks).toEqual([]);
    expect(entries).toMatchObject({
      ...{ 'right.sphere': '\u22121.50', 'right.axis': '5', 'right.add': '+1.75' },
      ...{ 'left.sphere': '0.00', 'left.axis': '175', 'left.add': '+1.75', 'pd.both': '62' },
    });
  });
});

describe('what is not known', () => {
  const EYE = 'OD -1.50 -0.50 x 170';
  const kinds = (text: string) =>
    readPaste(text).marks.map(({ start, end, kind }) => [kind, text.slice(start, end)]);

  it.each([
    ['VA 20/20', ['VA 20/20']],
    ['20/25-2 cc', ['20/25-2', 'cc']],
    ['sc 6/6', ['sc', '6/6']],
    ['AV 10/10', ['AV 10/10']],
    ['stable', ['stable']],
    ['aniso 12', ['aniso 12']],
    // German for an add: unknown here, so its amount is none.
    ['Nah +2.00', ['Nah +2.00']],
  ])('as %j, is marked where it stands, and all around it is read', (words, found) => {
    const text = `${EYE} ${words} add 1.50\nOS -1.00`;
    expect(kinds(text)).toEqual(found.map((one) => ['unknown', one]));
    expect(readPaste(text).eyes).toEqual(readPaste(text.replace(words, '')).eyes);
    expect(readPaste(text).eyes.right?.addD).toBe(1.5);
  });

  it.each([
    ['OD -1.50 cil -0.75 x 90', 'unclear', 'cil'],
    ['OD -1.50 cil 0.75 x 90', 'unclear', 'cil'],
    ['OD -1.75 DC x 90', 'fault', '-1.75 DC'],
    ['OD old -1.50', 'fault', 'old'],
    ['OD -1.50 -0.50 x 20/20', 'fault', '20'],
    ['OD -1.50 -0.50 20/20', 'fault', ''],
    ['OD -1.50 2 base haut', 'fault', 'haut'],
  ])('leaves the eye alone where it may change a figure: %j', (text, kind, found) => {
    const whole = `${text}\nOS -1.00`;
    const { eyes, unread } = readPaste(whole);
    expect(
      kinds(whole)
        .at(-1)
        ?.map((one) => one.trim()),
    ).toEqual([kind, found]);
    expect([eyes.right, unread, eyes.left?.power?.sphereD]).toEqual([null, ['right'], -1]);
  });

  it('never becomes a figure: an eye is read as without the words, or not at all', () => {
    const words = ['foo', 'foo 2.00', 'foo -0.75', 'foo x 45', 'VA 20/20', '6/9', 'cc'];
    const pieces = ['-1.50', '-0.50 x 5', 'add 1.50', '2 BI'];
    fc.assert(
      fc.property(fc.nat(4), fc.constantFrom(...words), fc.subarray(pieces), (at, word, parts) => {
        const whole = `OD ${parts.toSpliced(at, 0, word).join(' ')}\nOS -3.00`;
        const { right } = readPaste(whole).eyes;
        if (right !== null) expect(right).toEqual(readPaste(`OD ${parts.join(' ')}\nOS -3.00`).eyes.right);
        expect(marked(whole).length).toBeGreaterThan(0);
      }),
      { examples: [[3, 'foo', pieces]], numRuns: 400 },
    );
  });
});

it('never throws and marks only what is in the text, whatever is pasted', () => {
  const pieces = [
    'OU',
    'VA 20/20',
    'foo',
    'OD',
    'OS',
    'l',
    '-2.25',
    '-0.75 x 90',
    'x',
    'add',
    '+1.50',
    '\n',
    ';',
    'PD 63',
    '8.6',
    '19O',
    '\u20ac',
    'plano',
    'BU',
  ];
  fc.assert(
    fc.property(fc.array(fc.oneof(fc.constantFrom(...pieces), fc.string({ maxLength: 4 }))), (parts) => {
      const text = parts.join(' ');
      let last = 0;
      for (const { start, end } of readPaste(text).marks) {
        expect(start).toBeGreaterThanOrEqual(last);
        expect(end).toBeLessThanOrEqual(text.length);
        last = end;
      }
    }),
  );
});
