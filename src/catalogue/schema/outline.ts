/** What a file in content/outlines holds: a traced lens shape, as radii or as the tracer wrote it. */
import * as z from 'zod/mini';
import type { TraceFault } from '../../optics/trace.ts';
import { readTraceRecord, tracedOutline } from '../../optics/traceRecord.ts';
import { about, expects } from './about.ts';
import { fields, list, number, refuse } from './fields.ts';

const RADII = 'a list of 36 to 1440 radii in mm';
const TRACE = 'the lines of a trace record, TRCFMT= and R= among them, below "trace: |" and indented';

function radii() {
  return list(number(5, 60, 'mm')).check(
    z.minLength(36, { error: RADII }),
    z.maxLength(1440, { error: RADII }),
  );
}

/** The first thing that is wrong with a record, as a detail of a fault. */
function refusalOf(fault: TraceFault | undefined) {
  const expected = fault === undefined ? TRACE : `${fault.expected} in line ${fault.line} of the trace`;
  const hint =
    fault === undefined ? 'Copy the record again.' : `Copy the record again; found ${fault.found}.`;
  return { code: 'bad-trace', expected, hint } as const;
}

/** Radii of the right lens from a record; that of the left alone is mirrored. */
function trace() {
  const field = z.pipe(
    z.string({ error: TRACE }),
    z.transform((text, context) => {
      const record = readTraceRecord(text);
      const outline = record.faults.length === 0 ? tracedOutline(record, 'right') : null;
      if (outline === null) refuse(context, text, refusalOf(record.faults[0]));
      return outline?.radiiMm ?? [];
    }),
  );
  return expects(TRACE, field);
}

/** Schema of a traced outline. */
export function outlineSchema() {
  return z.union(
    [
      fields({
        radiiMm: about(
          'Radii of the right lens from the front, mm, at equal angles, counter-clockwise from +x (the nose), to the bevel apex or groove bottom. Their centre may be anywhere inside.',
          radii(),
        ),
      }),
      z.pipe(
        fields({
          trace: about('The record of a tracer; of a record for both eyes the right one counts.', trace()),
        }),
        z.transform(({ trace: radiiMm }) => ({ radiiMm })),
      ),
    ],
    { error: 'radiiMm or trace' },
  );
}
