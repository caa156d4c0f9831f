import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { box, mirror, perimeterMm } from '../../src/optics/outline.ts';
import { readTraceRecord, recordNumber, recordText, tracedOutline } from '../../src/optics/traceRecord.ts';
import { measuredEntries, writeTraceRecord } from '../../src/optics/traceWrite.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';

// The labels and units are from memory and from public test data, not from the text of a standard.
const radiiLines = (radius: number | string, count: number, perLine: number) =>
  Array.from(
    { length: Math.ceil(count / perLine) },
    (_, i) => `R=${new Array(Math.min(perLine, count - i * perLine)).fill(radius).join(';')}`,
  );
const record = (...lines: string[]) => `${lines.join('\r\n')}\r\n`;

describe('a record with a ring of 360 radii of 2500', () => {
  const read = readTraceRecord(
    record(
      'JOB=A-17',
      'SPH=-3.25;-2.75',
      'AX=170;?',
      '_MINE=a=b;c',
      'DBL=18.00',
      'TRCFMT=1;360;E;R;F',
      ...radiiLines(2500, 360, 8),
    ),
  );

  it('measures HBOX = VBOX = FED = 50.00 and CIRC 157.08', () => {
    const shape = tracedOutline(read, 'right') ?? ring(1);
    const { aMm, bMm, edMm } = box(shape);
    for (const mm of [aMm, bMm, edMm]) expectNear(mm, 50, 0.005, 'mm');
    expectNear(perimeterMm(shape), 157.08, 0.005, 'mm');
    expect(read.faults).toEqual([]);
    expect(read.traces).toMatchObject([{ side: 'right', type: 'F', mode: 'equal' }]);
  });

  it('gives fields by eye, one field to both, and null for what is not known', () => {
    expect(recordNumber(read, 'SPH', 'right')).toBe(-3.25);
    expect(recordNumber(read, 'SPH', 'left')).toBe(-2.75);
    expect(recordNumber(read, 'AX', 'left')).toBeNull();
    expect(recordNumber(read, 'DBL', 'left')).toBe(18);
    expect(recordText(read, 'JOB', 'left')).toBe('A-17');
    expect(recordNumber(read, 'JOB', 'right')).toBeNull();
    expect(recordText(read, 'NPD', 'right')).toBeNull();
  });

  it('keeps private labels as they are', () => {
    expect(read.entries).toContainEqual({ label: '_MINE', fields: ['a=b', 'c'] });
  });
});

describe('the forms of a text trace', () => {
  it('are read with LF alone, ten radii a line, small letters, marks round it and a byte-order mark', () => {
    const text = `\uFEFF\u001Ctrcfmt=1;40;e;l;p\n${radiiLines('2400', 40, 10).join(';\n')}\u001D\n\n`;
    const { traces, faults } = readTraceRecord(text);
    expect(faults).toEqual([]);
    expect(traces).toMatchObject([{ side: 'left', type: 'p', mode: 'equal' }]);
    expect(traces[0]?.outline.radiiMm).toEqual(new Array(40).fill(24));
  });

  it('with angles of their own are evened out', () => {
    const angles = Array.from({ length: 120 }, (_, i) => i * 300 + (i % 2) * 120);
    const lines = Array.from({ length: 12 }, (_, i) => `A=${angles.slice(i * 10, i * 10 + 10).join(';')}`);
    const { traces, faults } = readTraceRecord(
      record('TRCFMT=1;120;U;R;D', ...radiiLines(2500, 120, 10), ...lines),
    );
    expect(faults).toEqual([]);
    expect(traces[0]).toMatchObject({ mode: 'uneven', type: 'D' });
    expect(traces[0]?.outline.radiiMm).toHaveLength(360);
    for (const r of traces[0]?.outline.radiiMm ?? []) expectNear(r, 25, 0.02, 'mm');
  });

  it('of both sides give the left lens mirrored, and so does one of the other side alone', () => {
    const radii = Array.from({ length: 36 }, (_, i) => 2500 + 10 * i);
    const rows = [`R=${radii.slice(0, 18).join(';')}`, `R=${radii.slice(18).join(';')}`];
    const right = { radiiMm: radii.map((r) => r / 100) };
    for (const side of ['B', 'R']) {
      const read = readTraceRecord(record(`TRCFMT=1;36;E;${side};F`, ...rows));
      expect(tracedOutline(read, 'right')).toEqual(right);
      expect(tracedOutline(read, 'left')).toEqual(mirror(right));
    }
    expect(tracedOutline(readTraceRecord(''), 'left')).toBeNull();
  });
});

describe('faults of a record', () => {
  const faultsOf = (...lines: string[]) => readTraceRecord(record(...lines)).faults;

  it.each([
    ['a line without an equals sign', ['JOB A'], { code: 'no-equals-sign', line: 1, found: 'JOB A' }],
    ['radii before their format', ['R=2500'], { code: 'radii-without-format', line: 1 }],
    ['a binary format', ['TRCFMT=4;400;E;R;F'], { code: 'format-not-text', found: '4' }],
    ['too few fields', ['TRCFMT=1;400'], { code: 'format-fields', found: '1;400' }],
    ['too few radii for a shape', ['TRCFMT=1;12;E;R;F'], { code: 'count-out-of-range', found: '12' }],
    ['an unknown mode', ['TRCFMT=1;36;C;R;F'], { code: 'mode-unknown', found: 'C' }],
    ['an unknown side', ['TRCFMT=1;36;E;X;F'], { code: 'side-unknown', found: 'X' }],
    [
      'one radius too few',
      ['TRCFMT=1;37;E;R;F', ...radiiLines(2500, 36, 9)],
      { code: 'count-differs', line: 1, expected: '37 radii', found: '36' },
    ],
    [
      'a word for a radius',
      ['TRCFMT=1;36;E;R;F', 'R=2500;wide'],
      { code: 'radius-not-a-number', line: 2, found: 'wide' },
    ],
    [
      'a radius of 250 mm',
      ['TRCFMT=1;36;E;R;F', 'R=25000'],
      { code: 'radius-out-of-range', line: 2, found: '25000' },
    ],
    [
      'a word for an angle',
      ['TRCFMT=1;36;U;R;F', 'A=x'],
      { code: 'angle-not-a-number', line: 2, found: 'x' },
    ],
    [
      'angles that go back',
      [
        'TRCFMT=1;36;U;R;F',
        ...radiiLines(2500, 36, 9),
        `A=${Array.from({ length: 36 }, (_, i) => (i === 20 ? 100 : i * 1000)).join(';')}`,
      ],
      { code: 'angles-not-rising', found: '100' },
    ],
    [
      'angles over less than a turn',
      [
        'TRCFMT=1;36;U;R;F',
        ...radiiLines(2500, 36, 9),
        `A=${Array.from({ length: 36 }, (_, i) => i * 100).join(';')}`,
      ],
      { code: 'shape-folds-back' },
    ],
  ])('name %s with its line, what was expected and what was found', (_, lines, fault) => {
    const faults = faultsOf(...lines);
    expect(faults).toContainEqual(expect.objectContaining(fault));
    expect(faults[0]?.expected).not.toBe('');
  });

  it('leave the rest of the record read', () => {
    const read = readTraceRecord(
      record('nonsense', 'DBL=18', 'TRCFMT=1;36;E;L;F', ...radiiLines(2000, 36, 9)),
    );
    expect(read.faults).toHaveLength(1);
    expect(recordNumber(read, 'DBL', 'right')).toBe(18);
    expect(tracedOutline(read, 'left')?.radiiMm[0]).toBe(20);
  });

  it('are all there is to fear: no text makes the reader throw', () => {
    const line = fc.oneof(
      fc.string(),
      fc.stringMatching(/^(TRCFMT|R|A|[A-Z_]{1,6})=[0-9;EURLBF.?-]{0,30}$/),
      fc.constant('TRCFMT=1;36;U;R;F'),
      fc.constant(radiiLines(2500, 36, 36)[0] ?? ''),
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 8 }), (lines) => {
        const { traces } = readTraceRecord(lines.join('\n'));
        for (const { outline: shape } of traces) {
          expect(shape.radiiMm.length).toBeGreaterThanOrEqual(36);
          expect(shape.radiiMm.every((r) => Number.isFinite(r) && r > 0)).toBe(true);
        }
      }),
    );
  });
});

describe('writing and reading', () => {
  const label = fc.stringMatching(/^[A-Z_][A-Z0-9_]{1,7}$/).filter((name) => name !== 'TRCFMT');
  const field = fc.stringMatching(/^[A-Za-z0-9.?+-]{0,8}$/);

  it('gives back entries in their order and shapes to 0.01 mm', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ label, fields: fc.array(field, { minLength: 1, maxLength: 3 }) }), {
          maxLength: 6,
        }),
        outline,
        fc.constantFrom('right' as const, 'left' as const, 'both' as const),
        (entries, shape, side) => {
          const text = writeTraceRecord({
            entries,
            traces: [{ side, type: 'F', mode: 'equal', outline: shape }],
          });
          const read = readTraceRecord(text);
          expect(read.faults).toEqual([]);
          expect(read.entries).toEqual(entries);
          const found = read.traces[0]?.outline.radiiMm ?? [];
          expect(found).toHaveLength(360);
          expectNear(
            Math.max(...found.map((r, i) => Math.abs(r - (shape.radiiMm[i] ?? 0)))),
            0,
            0.00501,
            'mm',
          );
          expect(writeTraceRecord(read)).toBe(text);
        },
      ),
    );
  });

  it('ends each line with CR LF and writes ten radii a line', () => {
    const text = writeTraceRecord({
      entries: measuredEntries(ring(50), ring(48), 18),
      traces: [{ side: 'right', type: 'F', mode: 'equal', outline: ring(50, 40) }],
    });
    expect(text).toMatchInlineSnapshot(`
      "HBOX=50.00;48.00
      VBOX=50.00;48.00
      DBL=18.00
      FED=50.00;48.00
      FEDAX=0;0
      CIRC=157.08;150.79
      TRCFMT=1;40;E;R;F
      R=2500;2500;2500;2500;2500;2500;2500;2500;2500;2500
      R=2500;2500;2500;2500;2500;2500;2500;2500;2500;2500
      R=2500;2500;2500;2500;2500;2500;2500;2500;2500;2500
      R=2500;2500;2500;2500;2500;2500;2500;2500;2500;2500
      "
    `);
  });
});
