/**
 * The shapes in a trace record: `TRCFMT=1;count;mode;side;type`, then radii `R=` in 1/100 mm and, for uneven angles
 * (mode U), angles `A=` in 1/100 degree, counter-clockwise seen from the front with the first at 0 degrees.
 */
import { toRadians } from './angle.ts';
import { outlineFromPoints } from './outlineShape.ts';
import type { RecordLine, Trace, TraceFault } from './trace.ts';
import type { Outline } from './types.ts';

interface Draft {
  readonly line: number;
  readonly count: number;
  readonly mode: 'E' | 'U';
  readonly side: Trace['side'];
  readonly type: string;
  readonly radii: number[];
  readonly angles: number[];
}

const SIDES: Readonly<Record<string, Trace['side']>> = { R: 'right', L: 'left', B: 'both' };

/** Uneven traces are evened out to this many radii. */
const EVENED = 360;

/** The traces in the lines of a record that belong to traces, and what is wrong with them. */
export function readTraces(lines: readonly RecordLine[]): { traces: Trace[]; faults: TraceFault[] } {
  const faults: TraceFault[] = [];
  const traces: Trace[] = [];
  let draft: Draft | null = null;
  let known = false;
  const finish = () => {
    if (!draft) return;
    const trace = traceOf(draft, faults);
    if (trace) traces.push(trace);
  };
  for (const line of lines) {
    if (line.label === 'TRCFMT') {
      finish();
      draft = draftOf(line, faults);
      known = true;
    } else if (!known) {
      faults.push({
        code: 'radii-without-format',
        line: line.line,
        expected: 'TRCFMT=1;count;mode;side;type before it',
        found: `${line.label}=`,
      });
    } else if (draft) {
      readNumbers(line, draft, faults);
    }
  }
  finish();
  return { traces, faults };
}

function draftOf({ line, fields }: RecordLine, faults: TraceFault[]): Draft | null {
  const fault = (code: TraceFault['code'], expected: string, found: string | undefined): null => {
    faults.push({ code, line, expected, found: found ?? '' });
    return null;
  };
  const [format, count, mode, side, type] = fields;
  if (fields.length < 4)
    return fault('format-fields', 'five fields: 1;count;mode;side;type', fields.join(';'));
  if (format !== '1') return fault('format-not-text', '1, the text format', format);
  const points = /^\d+$/.test(count ?? '') ? Number(count) : Number.NaN;
  if (!(points >= 36 && points <= 10_000)) return fault('count-out-of-range', '36 to 10000 radii', count);
  const letter = mode?.toUpperCase();
  if (letter !== 'E' && letter !== 'U') return fault('mode-unknown', 'E (equal angles) or U (uneven)', mode);
  const named = SIDES[side?.toUpperCase() ?? ''];
  if (!named) return fault('side-unknown', 'R, L or B', side);
  return { line, count: points, mode: letter, side: named, type: type ?? '', radii: [], angles: [] };
}

function readNumbers({ line, label, fields }: RecordLine, draft: Draft, faults: TraceFault[]): void {
  const isRadius = label === 'R';
  // A line may end in a semicolon: what follows is no radius.
  const written = fields.at(-1) === '' ? fields.slice(0, -1) : fields;
  for (const field of written) {
    const value = /^\d+(\.\d+)?$/.test(field) ? Number(field) / 100 : Number.NaN;
    if (Number.isNaN(value))
      faults.push({
        code: isRadius ? 'radius-not-a-number' : 'angle-not-a-number',
        line,
        expected: isRadius ? 'hundredths of a millimetre' : 'hundredths of a degree',
        found: field,
      });
    else if (isRadius && !(value >= 1 && value <= 100))
      faults.push({
        code: 'radius-out-of-range',
        line,
        expected: '100 to 10000 (1 to 100 mm)',
        found: field,
      });
    (isRadius ? draft.radii : draft.angles).push(value);
  }
}

function traceOf(draft: Draft, faults: TraceFault[]): Trace | null {
  const { line, count, radii, angles } = draft;
  const even = draft.mode === 'E';
  for (const [name, list] of even
    ? ([['radii', radii]] as const)
    : ([
        ['radii', radii],
        ['angles', angles],
      ] as const)) {
    if (list.length === count) continue;
    faults.push({ code: 'count-differs', line, expected: `${count} ${name}`, found: String(list.length) });
    return null;
  }
  if (!radii.every((r) => r >= 1 && r <= 100) || angles.some(Number.isNaN)) return null;
  const outline = even ? { radiiMm: radii } : evened(draft, faults);
  if (!outline) return null;
  return { side: draft.side, type: draft.type, mode: even ? 'equal' : 'uneven', outline };
}

function evened({ line, radii, angles }: Draft, faults: TraceFault[]): Outline | null {
  const falls = angles.findIndex((angle, i) => i > 0 && !(angle > (angles[i - 1] as number)));
  if (falls >= 0 || (angles.at(-1) ?? 0) >= 360) {
    const at = falls >= 0 ? falls : angles.length - 1;
    const found = String(Math.round((angles[at] as number) * 100));
    faults.push({ code: 'angles-not-rising', line, expected: 'rising angles below 36000', found });
    return null;
  }
  const turn = (i: number) => toRadians(angles[i] as number);
  const outline = outlineFromPoints(
    {
      xMm: radii.map((r, i) => r * Math.cos(turn(i))),
      yMm: radii.map((r, i) => r * Math.sin(turn(i))),
    },
    EVENED,
  );
  if (!outline)
    faults.push({
      code: 'shape-folds-back',
      line,
      expected: 'a shape seen whole from its centre',
      found: 'gaps',
    });
  return outline;
}
