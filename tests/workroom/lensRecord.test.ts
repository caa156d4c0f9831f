import { describe, expect, it, test } from 'vitest';
import { readTraceRecord, recordNumber, recordText, tracedOutline } from '../../src/optics/traceRecord.ts';
import { lensOrder } from '../../src/workroom/lensOrder.ts';
import { lensRecordText, verificationIn } from '../../src/workroom/lensRecord.ts';
import { judgedOf, PAIRS, type PairName, shop } from './jobs.ts';

const NUMBER = '482109375562';

function written(name: PairName, known?: string) {
  const judged = judgedOf(PAIRS[name]);
  const record = known === undefined ? null : readTraceRecord(known);
  return { judged, text: lensRecordText(NUMBER, judged, lensOrder(judged, shop), record) };
}

test.each(Object.keys(PAIRS) as PairName[])(
  '%s: the record reads back without a fault, outlines to 0.01 mm',
  (name) => {
    const { judged, text } = written(name);
    const record = readTraceRecord(text);
    expect(record.faults).toEqual([]);
    expect(text.endsWith('\r\n')).toBe(true);
    expect(recordText(record, 'JOB', 'right')).toBe(NUMBER);
    for (const eye of ['right', 'left'] as const) {
      const ours = judged.resolved.frame[eye].radiiMm;
      const back = tracedOutline(record, eye)?.radiiMm ?? [];
      expect(back).toHaveLength(ours.length);
      for (const [i, radius] of back.entries())
        expect(Math.abs(radius - (ours[i] ?? 0))).toBeLessThanOrEqual(0.0051);
    }
  },
);

describe('the record of an order', () => {
  it('holds power, prism, places and limits as right;left', () => {
    const { text } = written('progressive');
    const lines = text.split('\r\n');
    // 1.00 in and 1.33 down (2/3 of an add of 2.00) are 1.67 towards 307 and 233 degrees.
    for (const line of [
      'DO=B',
      'SPH=-1.50;-2.00',
      'CYL=-1.00;-0.50',
      'AX=95;80',
      'ADD=2.00;2.00',
      'PRVM=1.67;1.67',
      'PRVA=307;233',
      'IPD=32.00;31.50',
      'OCHT=22.00;22.00',
      'SEGHT=?;?',
      'BVD=?',
      'LTYPE=PR;PR',
      'MINCTR=1.50;1.50',
    ])
      expect(lines).toContain(line);
    expect(text).toMatch(/^_BASIS=labels from memory;conformity not claimed\r$/m);
  });

  it('gives the compensated power where one is ordered', () => {
    const { judged, text } = written('wrapped');
    const compensated = judged.answer.right?.compensated;
    expect(compensated).not.toBeNull();
    expect(recordNumber(readTraceRecord(text), 'SPH', 'right')).toBe(compensated?.sphere);
  });

  it('has the segment heights and near PDs of a bifocal', () => {
    const record = readTraceRecord(written('bifocal').text);
    expect([recordNumber(record, 'SEGHT', 'right'), recordNumber(record, 'NPD', 'left')]).toEqual([17, 30]);
    expect(recordNumber(record, 'ETYP', 'right')).toBe(3);
  });

  it('keeps what another machine wrote, and the outline that it traced', () => {
    const ring = Array.from({ length: 36 }, () => '2400');
    const known = [
      'JOB=7',
      '_TRACER=shelf;2',
      'XYZ=1;2;3',
      'TRCFMT=1;36;E;B;F',
      `R=${ring.slice(0, 18).join(';')}`,
      `R=${ring.slice(18).join(';')}`,
    ].join('\r\n');
    const record = readTraceRecord(written('single', known).text);
    expect(record.entries).toContainEqual({ label: '_TRACER', fields: ['shelf', '2'] });
    expect(record.entries).toContainEqual({ label: 'XYZ', fields: ['1', '2', '3'] });
    expect(recordText(record, 'JOB', 'right')).toBe(NUMBER);
    expect(tracedOutline(record, 'left')?.radiiMm).toEqual(ring.map(() => 24));
  });

  it('lets no name of the shop end a field or a line', () => {
    const hostile = {
      ...shop,
      designs: shop.designs.map((one) => ({ ...one, name: 'A;B\r\nJOB=1 \u00e4' })),
    };
    const judged = judgedOf(PAIRS.single);
    const [design] = hostile.designs;
    if (design === undefined) throw new Error('The shop has designs.');
    const named = {
      ...judged,
      situation: { ...judged.situation, design: { ...judged.situation.design, name: design.name } },
    };
    const record = readTraceRecord(lensRecordText(NUMBER, named, lensOrder(named, shop)));
    expect(record.faults).toEqual([]);
    expect(record.entries.filter(({ label }) => label === 'JOB')).toHaveLength(1);
    expect(recordText(record, 'LNAM', 'left')).toBe('A B JOB 1 ?');
  });
});

describe('verification powers', () => {
  it('are read from a supplier in either form of cylinder', () => {
    const record = readTraceRecord(
      'INSSPH=-2.12;0.00\nINSCYL=-0.50;0.50\nINSAX=91;10\nINSADD=1.92;?\nINSPRVM=1.00;\nINSPRVA=90;',
    );
    const right = verificationIn(record, 'right');
    expect(right?.power).toEqual({ sphereD: -2.12, cylinderD: -0.5, axisDeg: 91 });
    expect(right?.addD).toBe(1.92);
    expect(right?.prism?.y).toBeCloseTo(1, 9);
    expect(verificationIn(record, 'left')).toEqual({
      power: { sphereD: 0.5, cylinderD: -0.5, axisDeg: 100 },
      addD: null,
      prism: null,
    });
  });

  it('are none where no sphere is stated', () => {
    expect(verificationIn(readTraceRecord('INSADD=2.00;2.00'), 'right')).toBeNull();
  });
});
