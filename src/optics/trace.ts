/** The words of trace records: entries, traces and faults as data. */
import type { Eye, Outline } from './types.ts';

/** One line of a record that is not part of a trace, in its order. */
export interface RecordEntry {
  readonly label: string;
  readonly fields: readonly string[];
}

/** A traced shape. The outline is that of the named side; a trace for both sides is stored as the right one. */
export interface Trace {
  readonly side: Eye | 'both';
  /** F frame, P pattern, D demonstration lens, or what the record says. */
  readonly type: string;
  /** Equal angles; `uneven` when the record gave its own angles and they were evened out. */
  readonly mode: 'equal' | 'uneven';
  /** mm, from the tracer's own centre, counter-clockwise seen from the front, the first at 0 degrees. */
  readonly outline: Outline;
}

/** What is wrong in a record: where (line from 1), what was expected and what was found. */
export interface TraceFault {
  readonly code:
    | 'no-equals-sign'
    | 'format-fields'
    | 'format-not-text'
    | 'mode-unknown'
    | 'side-unknown'
    | 'count-out-of-range'
    | 'radii-without-format'
    | 'radius-not-a-number'
    | 'radius-out-of-range'
    | 'angle-not-a-number'
    | 'angles-not-rising'
    | 'count-differs'
    | 'shape-folds-back';
  readonly line: number;
  readonly expected: string;
  readonly found: string;
}

/** A record as read: every line is an entry or part of a trace or a fault. */
export interface TraceRecord {
  readonly entries: readonly RecordEntry[];
  readonly traces: readonly Trace[];
  readonly faults: readonly TraceFault[];
}

/** A line of a record, split at its first equals sign. */
export interface RecordLine extends RecordEntry {
  readonly line: number;
}
