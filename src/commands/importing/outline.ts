/** A traced outline from the tracer's own file. */
import type { ContentFault } from '../../catalogue/fault.ts';
import { decodeSource, faultIn, faultOfFile } from '../../catalogue/reading/sourceText.ts';
import { centreTrace } from '../../catalogue/resolve/outline.ts';
import { ID_FORM } from '../../catalogue/schema/fields.ts';
import { box } from '../../optics/outline.ts';
import { readTraceRecord, tracedOutline } from '../../optics/traceRecord.ts';
import { writeTraceRecord } from '../../optics/traceWrite.ts';
import type { Eye, Outline } from '../../optics/types.ts';
import { schemaLine } from '../schemaLine.ts';
import { type Plan, placeOf, type Shelf } from './files.ts';

const shown = (mm: number) => String(Math.round(mm * 10) / 10);

/** The file of the outline `id` with the lens of one eye as the right one, or all that is wrong with the record. */
export function planOutline(path: string, bytes: Uint8Array, id: string, eye: Eye, shelf: Shelf): Plan {
  const decoded = decodeSource({ path, bytes: withoutMarks(bytes) });
  if (!decoded.ok) return { ok: false, faults: [decoded.fault] };
  const record = readTraceRecord(decoded.source.text);
  const lines = decoded.source.text.split('\n');
  const startOf = (line: number) => lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  const faults: ContentFault[] = record.faults.map(({ line, expected, found }) =>
    faultIn(decoded.source, startOf(line), startOf(line) + (lines[line - 1]?.length ?? 1), [], {
      code: 'bad-trace',
      expected,
      received: found === '' ? 'nothing' : found,
      hint: 'Send the trace again from the tracer.',
    }),
  );
  faults.push(...idFaults(path, id, shelf));
  const traced = record.faults.length === 0 ? rightOf(record, eye) : null;
  if (record.faults.length === 0 && (traced === null || centreTrace(traced.radiiMm) === null))
    faults.push(faultOfFile(path, noOutline(record.traces.length)));
  if (faults.length > 0 || traced === null) return { ok: false, faults };
  const measured = box(centreTrace(traced.radiiMm) ?? traced);
  const [a, b, ed] = [measured.aMm, measured.bMm, measured.edMm].map(shown);
  const text = outlineText(id, traced);
  const step = {
    path: placeOf(shelf, `${shelf.folder.name}/outlines/${id}.yaml`),
    text,
    before: null,
    fresh: true,
  };
  const note = `In the size that it is of, write: a: ${a}, b: ${b}, ed: ${ed}, outline: { traced: ${id} }`;
  return { ok: true, steps: [step], note };
}

/** Start and end marks that machines send round a record are no text. */
const withoutMarks = (bytes: Uint8Array) =>
  bytes.filter((byte) => byte === 9 || byte === 10 || byte === 13 || byte >= 32);

/** The right lens: traced as such, or the left one seen in the mirror. */
function rightOf(record: ReturnType<typeof readTraceRecord>, eye: Eye): Outline | null {
  const own = record.traces.filter(({ side }) => side === eye || side === 'both');
  return tracedOutline({ ...record, traces: own.length > 0 ? own : record.traces }, 'right');
}

function outlineText(id: string, outline: Outline): string {
  const trace = writeTraceRecord({
    entries: [],
    traces: [{ side: 'right', type: 'F', mode: 'equal', outline }],
  });
  const lines = trace
    .trim()
    .split('\r\n')
    .map((line) => `  ${line}`);
  return `${schemaLine(`outlines/${id}.yaml`)}
# The right lens from the front, as it was traced: radii in 1/100 mm, counter-clockwise from the nose.
trace: |
${lines.join('\n')}
`;
}

function idFaults(path: string, id: string, { folder }: Shelf): ContentFault[] {
  const fault = (code: 'bad-file-name' | 'there-already', expected: string) =>
    faultOfFile(path, { code, expected, received: `"${id}"`, hint: 'Give another --id.' });
  if (!ID_FORM.test(id)) return [fault('bad-file-name', 'an --id of small letters a-z, digits and hyphens')];
  const taken = folder.files.some((file) => file.path.toLowerCase() === `${folder.name}/outlines/${id}.yaml`);
  return taken ? [fault('there-already', 'an outline that the shop does not have yet')] : [];
}

const noOutline = (traces: number) =>
  ({
    code: 'bad-trace',
    expected: 'the trace of one lens, whose whole edge is seen from the middle of its box',
    received: traces === 0 ? 'no trace' : 'radii from which no such outline comes',
    hint: 'Trace the lens again, and look for a radius that is out of line.',
  }) as const;
