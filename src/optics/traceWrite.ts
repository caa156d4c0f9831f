/** Writing trace records: the inverse of `readTraceRecord`, and the measurements of a pair of outlines as entries. */
import { box, perimeterMm } from './outline.ts';
import type { RecordEntry, Trace } from './trace.ts';
import type { Outline } from './types.ts';

const PER_LINE = 10;

const SIDE_LETTER = { right: 'R', left: 'L', both: 'B' } as const;

/**
 * A record as text with CR LF: the entries in their order, then the traces at equal angles, radii in 1/100 mm, ten a
 * line. What `readTraceRecord` gives back differs only by rounding to 0.01 mm.
 */
export function writeTraceRecord(record: {
  readonly entries: readonly RecordEntry[];
  readonly traces: readonly Trace[];
}): string {
  const lines = record.entries.map(({ label, fields }) => `${label}=${fields.join(';')}`);
  for (const { side, type, outline } of record.traces) {
    const radii = outline.radiiMm.map((r) => String(Math.round(r * 100)));
    lines.push(`TRCFMT=1;${radii.length};E;${SIDE_LETTER[side]};${type}`);
    for (let i = 0; i < radii.length; i += PER_LINE)
      lines.push(`R=${radii.slice(i, i + PER_LINE).join(';')}`);
  }
  return lines.map((line) => `${line}\r\n`).join('');
}

/** The measurements of a pair, mm and degrees, as entries: HBOX, VBOX, FED, FEDAX, CIRC as `right;left`, and DBL. */
export function measuredEntries(right: Outline, left: Outline, dblMm: number): RecordEntry[] {
  const boxes = [box(right), box(left)] as const;
  const pair = (label: string, of: (b: ReturnType<typeof box>) => number, digits: number): RecordEntry => ({
    label,
    fields: boxes.map((b) => of(b).toFixed(digits)),
  });
  return [
    pair('HBOX', (b) => b.aMm, 2),
    pair('VBOX', (b) => b.bMm, 2),
    { label: 'DBL', fields: [dblMm.toFixed(2)] },
    pair('FED', (b) => b.edMm, 2),
    pair('FEDAX', (b) => b.edAxisDeg, 0),
    { label: 'CIRC', fields: [perimeterMm(right).toFixed(2), perimeterMm(left).toFixed(2)] },
  ];
}
