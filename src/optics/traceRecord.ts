/**
 * Trace and order records as text, line by line: `LABEL=field;field`, both eyes as `right;left`. Written from
 * memory of the trade's data interchange and from public test data, so conformity with a standard is not claimed.
 * A label that is not known is kept as it is, and one that starts with `_` is private: kept, never interpreted.
 */
import { mirror } from './outline.ts';
import type { RecordLine, TraceFault, TraceRecord } from './trace.ts';
import { readTraces } from './traceShape.ts';
import type { Eye, Outline } from './types.ts';

/** Labels whose lines belong to a trace. */
const OF_A_TRACE = new Set(['TRCFMT', 'R', 'A']);

/** Marks of start, end and separation that some machines send round a record. */
function withoutMarks(text: string): string {
  return [...text]
    .map((character) => {
      const code = character.charCodeAt(0);
      return code === 9 || code >= 32 ? character : '';
    })
    .join('');
}

/** Reads a record; lines may end in CR LF, LF or CR. Never throws: what cannot be read is in `faults`. */
export function readTraceRecord(text: string): TraceRecord {
  const faults: TraceFault[] = [];
  const lines: RecordLine[] = [];
  text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .forEach((raw, i) => {
      const written = withoutMarks(raw).trim();
      if (written === '') return;
      const at = written.indexOf('=');
      if (at < 1) {
        faults.push({ code: 'no-equals-sign', line: i + 1, expected: 'LABEL=field;field', found: written });
        return;
      }
      const label = written.slice(0, at).trim();
      const fields = written
        .slice(at + 1)
        .split(';')
        .map((field) => field.trim());
      lines.push({ line: i + 1, label: label.startsWith('_') ? label : label.toUpperCase(), fields });
    });
  const { traces, faults: traceFaults } = readTraces(lines.filter(({ label }) => OF_A_TRACE.has(label)));
  const entries = lines
    .filter(({ label }) => !OF_A_TRACE.has(label))
    .map(({ label, fields }) => ({ label, fields }));
  return { entries, traces, faults: [...faults, ...traceFaults].sort((a, b) => a.line - b.line) };
}

/** A field of a record for an eye as text, or null where it is absent, empty or `?`. One field alone serves both. */
export function recordText(record: TraceRecord, label: string, eye: Eye): string | null {
  const entry = record.entries.find((candidate) => candidate.label === label);
  const field = entry?.fields[eye === 'left' && entry.fields.length > 1 ? 1 : 0];
  return field === undefined || field === '' || field === '?' ? null : field;
}

/** A field of a record for an eye as a number in the record's own unit; null where it is absent or not a number. */
export function recordNumber(record: TraceRecord, label: string, eye: Eye): number | null {
  const field = recordText(record, label, eye);
  return field !== null && /^[+-]?(\d+\.?\d*|\.\d+)$/.test(field) ? Number(field) : null;
}

/** The traced outline of an eye, that of both sides or the other side's mirrored where it is missing; or null. */
export function tracedOutline(record: TraceRecord, eye: Eye): Outline | null {
  const own = record.traces.find(({ side }) => side === eye);
  if (own) return own.outline;
  const other = record.traces[0];
  if (!other) return null;
  return other.side === 'both' && eye === 'right' ? other.outline : mirror(other.outline);
}
