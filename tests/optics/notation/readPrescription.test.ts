import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { NotationFault } from '../../../src/optics/notation/fault.ts';
import { readEye, readPrescription } from '../../../src/optics/notation/readPrescription.ts';
import type { WrittenEye } from '../../../src/optics/notation/written.ts';

const eye = (sphereD: number, cylinderD = 0, axisDeg = 180, more: Partial<WrittenEye> = {}): WrittenEye => ({
  power: { sphereD, cylinderD, axisDeg },
  addD: null,
  prisms: [],
  ...more,
});

function faultOf(text: string, read: typeof readEye | typeof readPrescription = readEye): NotationFault {
  const result = read(text);
  if (result.ok) throw new Error(`expected a fault in ${text}`);
  expect(text.slice(result.fault.start, result.fault.end)).toBe(result.fault.found);
  return result.fault;
}

describe('one eye', () => {
  it.each([
    ['-2.25 -0.75 x 90 add +1.50', eye(-2.25, -0.75, 90, { addD: 1.5 })],
    ['-2.25', eye(-2.25)],
    ['-2.25 DS', eye(-2.25)],
    ['+1.00 D.S.', eye(1)],
    ['-2.25D', eye(-2.25)],
    ['+.50 sph', eye(0.5)],
    ['plano', eye(0)],
    ['Plano DS', eye(0)],
    ['PL', eye(0)],
    ['pl.', eye(0)],
    ['\u221e', eye(0)],
    ['\u221e/-0.75x165', eye(0, -0.75, 165)],
    ['0.00', eye(0)],
    ['-0.00', eye(0)],
    ['plano -0.50 x 180', eye(0, -0.5, 180)],
    ['pl/-0.50x005', eye(0, -0.5, 5)],
    ['+1.00 +0.50 x 37', eye(1, 0.5, 37)],
    ['-1.00 -0.50 x 0', eye(-1, -0.5, 180)],
    ['-1.00 0.00', eye(-1)],
    ['-1.00 0.00 x 45', eye(-1)],
    ['-2,25/-0,75x090', eye(-2.25, -0.75, 90)],
    ['-1,00,-0,50x90', eye(-1, -0.5, 90)],
    ['- 2.25 \u2212 0.75 \u00d7 90\u00b0', eye(-2.25, -0.75, 90)],
    ['\u20132.25 / \u20130.75 axis 90', eye(-2.25, -0.75, 90)],
    ['-2.25 DS / -0.75 DC ax 90', eye(-2.25, -0.75, 90)],
    ['-2.25DS/-0.75DCx90', eye(-2.25, -0.75, 90)],
    ['-2.25dsph -0.75dcX 90', eye(-2.25, -0.75, 90)],
    ['-2.25 -0.75 90', eye(-2.25, -0.75, 90)],
    ['sph -2.25 cyl -0.75 axis 90', eye(-2.25, -0.75, 90)],
    ['Sphere: -2.25, Cylinder: -0.75, Axis: 90, Add: 1.5', eye(-2.25, -0.75, 90, { addD: 1.5 })],
    ['-2.25 -0.75 x 90 +1.50 add', eye(-2.25, -0.75, 90, { addD: 1.5 })],
    ['-2.25 +1.50 Add', eye(-2.25, 0, 180, { addD: 1.5 })],
    ['-2.25 -0.75 A 90', eye(-2.25, -0.75, 90)],
    ['+1.00 add 2', eye(1, 0, 180, { addD: 2 })],
    ['\u22122,25 (\u22120,75 \u00e0 170\u00b0) add 1,50', eye(-2.25, -0.75, 170, { addD: 1.5 })],
    ['-2,25 (170\u00b0 -0,75) Addition : 1,50', eye(-2.25, -0.75, 170, { addD: 1.5 })],
    ['-2,25 (170 -0,75)', eye(-2.25, -0.75, 170)],
    ['-2,25 170\u00b0 -0,75', eye(-2.25, -0.75, 170)],
    ['-2,25 -0,75 (170\u00b0)', eye(-2.25, -0.75, 170)],
    ['-2,25 -0,75 \u00e0 170', eye(-2.25, -0.75, 170)],
    ['plan (-0,50 \u00d7 5)', eye(0, -0.5, 5)],
    ['sphère -2,25 cylindre -0,75 axe 90', eye(-2.25, -0.75, 90)],
    ['-2,25 2 dioptries base externe', eye(-2.25, 0, 180, { prisms: [{ amount: 2, base: 'out' }] })],
    ['bal', eye(0, 0, 180, { power: null })],
  ])('written %j is read', (text, expected) => {
    expect(readEye(text)).toEqual({ ok: true, value: expected });
  });

  it.each([
    [
      '1.5 BI 0.5 BU',
      [
        { amount: 1.5, base: 'in' },
        { amount: 0.5, base: 'up' },
      ],
    ],
    ['1,5 BO', [{ amount: 1.5, base: 'out' }]],
    ['1.5\u2206 BD', [{ amount: 1.5, base: 'down' }]],
    ['1.5\u0394 base in', [{ amount: 1.5, base: 'in' }]],
    [
      '1.5^ BU & 2^ BO',
      [
        { amount: 1.5, base: 'up' },
        { amount: 2, base: 'out' },
      ],
    ],
    ['2 pd up', [{ amount: 2, base: 'up' }]],
    ['with 2 prism dioptres base out', [{ amount: 2, base: 'out' }]],
    ['2 D base out', [{ amount: 2, base: 'out' }]],
    [
      'BI 1.5 BU .5',
      [
        { amount: 1.5, base: 'in' },
        { amount: 0.5, base: 'up' },
      ],
    ],
    ['prism: 2 base down', [{ amount: 2, base: 'down' }]],
    ['2.5 @ 37', [{ amount: 2.5, base: 37 }]],
    ['2.5 @ 037\u00b0', [{ amount: 2.5, base: 37 }]],
    ['prism 2.5 base 217', [{ amount: 2.5, base: 217 }]],
    ['2.5 B 217', [{ amount: 2.5, base: 217 }]],
    ['2.5 BU @ 37', [{ amount: 2.5, base: 37 }]],
    ['2.5 base down along 37', [{ amount: 2.5, base: 217 }]],
    ['BD 2.5 @ 143\u00b0', [{ amount: 2.5, base: 323 }]],
  ] as const)('with the prism %j is read, before or behind the add', (text, prisms) => {
    const expected = { ok: true, value: eye(-1, -0.5, 90, { addD: 1.5, prisms }) };
    expect(readEye(`-1.00 -0.50 x 90 ${text} add +1.50`)).toEqual(expected);
    expect(readEye(`-1.00 -0.50 x 90 add +1.50 ${text}`)).toEqual(expected);
    expect(readEye(`-1.00 ${text}`)).toEqual({ ok: true, value: eye(-1, 0, 180, { prisms }) });
  });
});

describe('both eyes', () => {
  const both = { right: eye(-2, -0.5, 90), left: eye(1) };
  it.each([
    'OD -2.00 -0.50 x 90\nOS +1.00 DS',
    'od: -2.00/-0.50x90; os: +1.00',
    'R -2.00 -0.50 x 90 L +1.00',
    'RE -2,00 -0,50 x 90, LE +1,00',
    'L: +1.00 DS\r\n\r\nR: -2.00 -0.50 x 090\r\n',
    'O.D. -2.00 -0.50 x 90 / O.S. +1.00',
    'OD -2,00 (-0,50 \u00e0 90\u00b0) OG +1,00',
    '\u0152il droit : -2,00 (90\u00b0 -0,50)\n\u0152il gauche : +1,00',
    'Right eye: -2.00 -0.50 x 90\nLeft eye: +1.00',
  ])('written %j are read', (text) => {
    expect(readPrescription(text)).toEqual({ ok: true, value: both });
  });

  it('have an add each, or one for both behind them or with OU', () => {
    const near = { right: eye(-2, 0, 180, { addD: 1.5 }), left: eye(-1, 0, 180, { addD: 1.5 }) };
    const texts = [
      'OD -2.00\nOS -1.00\nadd +1.50',
      'OD -2.00 add 1.50 OS -1.00 add 1.50',
      'OD -2.00 OS -1.00 OU add 1.50',
      'OD -2.00 OS -1.00 add 1.50 OU',
      'OD -2.00\nOS -1.00\nadd OU: 1.50',
      'OD -2.00 +1.50 add OU, OS -1.00',
    ];
    for (const text of texts) expect(readPrescription(text)).toEqual({ ok: true, value: near });
  });

  it('are the same with OU or BE, and one may be absent', () => {
    expect(readPrescription('OU plano')).toEqual({ ok: true, value: { right: eye(0), left: eye(0) } });
    expect(readPrescription('BE +0.50 DS')).toEqual({ ok: true, value: { right: eye(0.5), left: eye(0.5) } });
    expect(readPrescription('OS -1.00')).toEqual({ ok: true, value: { right: null, left: eye(-1) } });
  });
});

describe('a fault', () => {
  it.each([
    ['2.25', 'no-sign', 0, '2.25'],
    ['-2.25 0.75 x 90', 'no-sign', 6, '0.75'],
    ['-225', 'power-range', 0, '-225'],
    ['-2.25 -75 x 90', 'power-range', 6, '-75'],
    ['-2.25 -0.75', 'no-axis', 11, ''],
    ['-2.25 -0.75 x', 'no-axis', 13, ''],
    ['-2.25 -0.75 x add 2', 'no-axis', 14, 'add'],
    ['-2.25 -0.75 @ 90', 'no-axis', 12, '@'],
    ['-2.25 -0.75 x 190', 'axis-range', 14, '190'],
    ['-2.25 cyl x 90', 'no-power', 10, 'x'],
    ['-2.25 x 90', 'no-power', 6, 'x'],
    ['-2.25 DC x 90', 'no-power', 0, '-2.25 DC'],
    ['-2.25 -0.75 add +1.50', 'no-axis', 12, 'add'],
    ['', 'no-power', 0, ''],
    ['x 90', 'no-power', 0, 'x'],
    ['constructor', 'no-power', 0, 'constructor'],
    ['-2.25 add -1.50', 'add-range', 10, '-1.50'],
    ['-2.25 add 150', 'add-range', 10, '150'],
    ['-2.25 add 1.50 add 2.00', 'twice', 15, 'add'],
    ['-2.25 prism 1.5', 'no-base', 15, ''],
    ['-2.25 1.5 base left', 'no-base', 15, 'left'],
    ['-2.25 2 @ 400', 'no-base', 10, '400'],
    ['-2.25 2 BU @ 190', 'no-base', 13, '190'],
    ['-2.25 2 BI @ 37', 'left-over', 11, '@'],
    ['-2.25 150 BI', 'prism-range', 6, '150'],
    ['-2.25 BI x', 'prism-range', 9, 'x'],
    ['-2.25 dozen', 'left-over', 6, 'dozen'],
    ['-2.25 (both)', 'left-over', 6, '('],
    ['-2.25 (0.75 x 90)', 'no-sign', 7, '0.75'],
    ['-2.25 (-0.75 x 90', 'left-over', 17, ''],
    ['-2.25 (190\u00b0 -0.75)', 'axis-range', 7, '190'],
    ['-2.25 170 -0.75', 'no-sign', 6, '170'],
    ['-2.25 \u{1f453}', 'unknown-sign', 6, '\u{1f453}'],
  ] as const)('in %j is %s at %d: %j', (text, code, start, found) => {
    expect(faultOf(text)).toMatchObject({ code, start, found });
  });

  it.each([
    ['-1.00\n-2.00', 'no-eye', 0, '-1.00'],
    ['', 'no-eye', 0, ''],
    ['OD', 'no-power', 2, ''],
    ['OD -1.00 R -2.00', 'eye-twice', 9, 'R'],
    ['OD -1.00\n-2.00', 'left-over', 9, '-2.00'],
    ['OD -1.00\nadd 2.00\nOS -1.00', 'left-over', 9, 'add'],
    ['OD -1.00 OS -1.00\nadd 2.00\nadd 2.25', 'twice', 27, 'add'],
    ['OU -1.00 OS -2.00', 'eye-twice', 9, 'OS'],
    ['OD -1.00 OU', 'no-power', 11, ''],
    ['OD -1.00 OS -1.00 add 2.00 OU -3.00', 'eye-twice', 27, 'OU'],
    ['__proto__', 'unknown-sign', 0, '_'],
  ] as const)('of a pair in %j is %s at %d: %j', (text, code, start, found) => {
    expect(faultOf(text, readPrescription)).toMatchObject({ code, start, found });
  });

  it('says what was expected', () => {
    expect(['2.25', '-2 -1', '-99', '-1 add 9', '-1 2 @ 400'].map((text) => faultOf(text).expected)).toEqual([
      { code: 'sphere-sign', figures: {} },
      { code: 'axis', figures: {} },
      { code: 'sphere-range', figures: { most: 40 } },
      { code: 'add-range', figures: { least: 0.25, most: 6 } },
      { code: 'base', figures: {} },
    ]);
  });

  it('is all that any text can give besides a prescription: nothing throws, and places lie inside the text', () => {
    const pieces = [
      'OD',
      'OS',
      '-2.25',
      '+0,50',
      '1.5',
      'x',
      '90',
      'BI',
      'add',
      'plano',
      '/',
      '@',
      '\n',
      ' ',
      'base',
      '?',
      'DS',
    ];
    const text = fc.oneof(
      fc.string(),
      fc.array(fc.constantFrom(...pieces)).map((parts) => parts.join(' ')),
    );
    fc.assert(
      fc.property(text, (written) => {
        for (const read of [readEye, readPrescription]) {
          const result = read(written);
          if (result.ok) continue;
          const { start, end, found } = result.fault;
          expect(start >= 0 && start <= end && end <= written.length).toBe(true);
          expect(written.slice(start, end)).toBe(found);
        }
      }),
      { numRuns: 500 },
    );
  });
});
