/**
 * All that the workroom keeps, as one file to carry to another machine: a line that says what it is, then one line of
 * JSON a sealed order and one a job's progress. Read back as strictly as an order, line by line, since with pictures
 * in the orders the whole is longer than a text may be.
 */
import { isCivilDate } from '../../catalogue/civilDate.ts';
import { JOB_STATES } from '../../catalogue/workroom.ts';
import { type Progress, REMAKE_REASONS } from '../../workroom/inHand.ts';
import { isOrderNumber } from '../../workroom/job.ts';
import type { Orders } from './orders.ts';
import type { Kept, KeptFile } from './shelf.ts';

const VERSION_KEY = 'bevelbook-workroom';
const VERSION = 1;
/** More would not fit into memory. */
const MOST_BUNDLE_BYTES = 1_000_000_000;
/** A sealed order of the largest size in base64. */
const MOST_LINE_LETTERS = 28_000_000;
const MOST_STEPS = 500;
const EYES = ['right', 'left', 'both'];

type Letters = Pick<Orders, 'toBase64' | 'fromBase64' | 'isSealed' | 'sizeRefusal'>;

/** The file. */
export function writeBundle({ files, progress, notes }: Kept, { toBase64 }: Pick<Letters, 'toBase64'>): Blob {
  const lines = [
    { [VERSION_KEY]: VERSION },
    ...files.map(({ id, bytes }) => ({ id, sealed: toBase64(bytes) })),
    ...notes.map(({ id, bytes }) => ({ id, notes: toBase64(bytes) })),
    ...progress,
  ];
  return new Blob(
    lines.map((line) => `${JSON.stringify(line)}\n`),
    { type: 'application/jsonl' },
  );
}

/** What is in the file; null where anything in it is not as this page writes it. Nothing of such a file is taken. */
export async function readBundle(file: Blob, letters: Letters): Promise<Kept | null> {
  if (file.size === 0 || file.size > MOST_BUNDLE_BYTES) return null;
  const files: KeptFile[] = [];
  const progress: Progress[] = [];
  const notes: KeptFile[] = [];
  let isFirst = true;
  for await (const line of linesOf(file)) {
    const json = line === null ? null : parse(line);
    if (json === null) return null;
    if (isFirst) {
      if (json[VERSION_KEY] !== VERSION) return null;
      isFirst = false;
      continue;
    }
    const [sealed, typed, job] = readLine(json, letters);
    if (sealed !== null) files.push(sealed);
    else if (typed !== null) notes.push(typed);
    else if (job !== null) progress.push(job);
    else return null;
  }
  return isFirst ? null : { files, progress, notes };
}

/** The lines of a text; null for one that is too long to be ours, and nothing after it. */
async function* linesOf(file: Blob): AsyncGenerator<string | null> {
  const reader = file.stream().getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let parts: string[] = [];
  let letters = 0;
  for (;;) {
    const { done, value } = await reader.read();
    const pieces = decoder.decode(value, { stream: !done }).split('\n');
    for (const [at, piece] of pieces.entries()) {
      parts.push(piece);
      letters += piece.length;
      if (letters > MOST_LINE_LETTERS) {
        yield null;
        return;
      }
      if (at === pieces.length - 1) continue;
      yield parts.join('');
      parts = [];
      letters = 0;
    }
    if (!done) continue;
    // Every line ends: a file that was cut short does not.
    if (letters > 0) yield null;
    return;
  }
}

type Loose = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: unknown, most: number): value is string =>
  typeof value === 'string' && value.length <= most;
const isDay = (value: unknown) => typeof value === 'string' && isCivilDate(value);
const isOneOf = (value: unknown, list: readonly string[]) =>
  typeof value === 'string' && list.includes(value);

function parse(line: string): Loose | null {
  try {
    const json: unknown = JSON.parse(line);
    return isObject(json) ? json : null;
  } catch {
    return null;
  }
}

function readLine(json: Loose, letters: Letters): [KeptFile | null, KeptFile | null, Progress | null] {
  const { id, sealed, notes } = json;
  if (sealed !== undefined) return [readFile(id, sealed, letters), null, null];
  if (notes !== undefined) return [null, readFile(id, notes, letters), null];
  return [null, null, readProgress(json)];
}

function readFile(
  id: unknown,
  sealed: unknown,
  { fromBase64, isSealed, sizeRefusal }: Letters,
): KeptFile | null {
  if (!isText(id, 21) || typeof sealed !== 'string' || !/^\d{12}(?:-[0-9a-f]{8})?$/.test(id)) return null;
  const bytes = fromBase64(sealed);
  const isFine =
    bytes !== null && isOrderNumber(id.slice(0, 12)) && sizeRefusal(bytes.length) === null && isSealed(bytes);
  return isFine ? { id, bytes } : null;
}

/** Only the fields that are ours are taken over. */
function readProgress(job: Loose): Progress | null {
  const { number, steps, remakes } = job;
  if (!isText(number, 12) || !isOrderNumber(number)) return null;
  if (!Array.isArray(steps) || !Array.isArray(remakes) || steps.length === 0) return null;
  if (steps.length + remakes.length > MOST_STEPS) return null;
  if (!steps.every(isStep) || !remakes.every(isRemake)) return null;
  return {
    number,
    steps: steps.map(({ state, on, by }) => ({ state, on, by })),
    remakes: remakes.map(({ on, reason, eye, note }) => ({ on, reason, eye, note })),
  };
}

const isStep = (step: unknown): step is Progress['steps'][number] =>
  isObject(step) && isOneOf(step['state'], JOB_STATES) && isDay(step['on']) && isText(step['by'], 80);

const isRemake = (one: unknown): one is Progress['remakes'][number] =>
  isObject(one) &&
  isDay(one['on']) &&
  isOneOf(one['reason'], REMAKE_REASONS) &&
  isOneOf(one['eye'], EYES) &&
  isText(one['note'], 300);
