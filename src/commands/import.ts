/**
 * `npm run import -- frames|prices FILE.csv --mapping FILE.yaml` and `npm run import -- outline FILE --id ID`: brings
 * frames, prices or a traced outline into the content folder, and asks for what the line lacks. All rows or none: where
 * one thing is wrong, every fault is told with its line and nothing is written. `--dry-run` shows the difference and
 * writes nothing. Exit status 0 when it is written or could be, 1 otherwise.
 */
import { readFileSync } from 'node:fs';
import type { ContentFault } from '../catalogue/fault.ts';
import { compareFaults } from '../catalogue/fault.ts';
import { loadFolder } from '../catalogue/load.ts';
import { printFault, printFaults } from '../catalogue/printFaults.ts';
import { knownOf, Refused } from './creating/create.ts';
import { complete, type Line, readLine, USAGE } from './importing/commandLine.ts';
import { readCsv } from './importing/csv.ts';
import { diffText } from './importing/diff.ts';
import type { Plan, Shelf } from './importing/files.ts';
import { planFrames } from './importing/frames.ts';
import { readMapping } from './importing/mapping.ts';
import { planOutline } from './importing/outline.ts';
import { planPrices } from './importing/prices.ts';
import { openTerminal } from './terminal.ts';
import { tryChanges } from './tryChanges.ts';
import { writeAll } from './writeAll.ts';

function bytesOf(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (error) {
    throw new Refused(`${path} cannot be read: ${error instanceof Error ? error.message : error}`);
  }
}

function planOf({ kind, file = '', mapping = '', id = '', eye }: Line, shelf: Shelf): Plan {
  const bytes = bytesOf(file);
  if (kind === 'outline') {
    if (eye !== 'right' && eye !== 'left') throw new Refused(`Expected --eye right or left, found ${eye}.`);
    return planOutline(file, bytes, id, eye, shelf);
  }
  const read = readMapping(mapping, bytesOf(mapping));
  if (!read.ok) return read;
  const csv = readCsv(file, bytes, read.mapping);
  if (!csv.ok) return csv;
  const { content, currency } = knownOf(shelf.folder, shelf.root);
  return kind === 'frames'
    ? planFrames(csv.csv, read.mapping, shelf, currency)
    : planPrices(csv.csv, read.mapping, shelf, content, currency);
}

/** Faults as `npm run check` prints them; what the mapping is told stands there once, whatever rows it holds for. */
function listFaults(faults: readonly ContentFault[]): string {
  const texts = [...new Set(faults.toSorted(compareFaults).map(printFault))];
  const count = texts.length === 1 ? 'One fault' : `${texts.length} faults`;
  return [...texts, `${count}. Nothing was written.`].join('\n\n');
}

function run(line: Line): void {
  const folder = loadFolder(line.shop);
  if (folder.files.length === 0) throw new Refused(printFaults(folder.faults));
  const plan = planOf(line, { root: line.shop, folder });
  if (!plan.ok) throw new Refused(listFaults(plan.faults));
  const { steps, note } = plan;
  const { faults } = tryChanges(folder, line.shop, steps);
  if (faults.length > 0) throw new Refused(listFaults(faults.map(plan.explain ?? ((fault) => fault))));
  const fresh = steps.filter((step) => step.fresh).length;
  const counts = `${fresh} new, ${steps.length - fresh} changed. ${note}`;
  if (line['dry-run']) {
    if (steps.length > 0) console.log(`${diffText(steps)}\n`);
    console.log(`Dry run, nothing was written. Files: ${counts}`);
  } else {
    writeAll(steps);
    console.log(`Files: ${counts}\nnpm run check, and npm run dev to look at it.`);
  }
}

const opened: ReturnType<typeof openTerminal>[] = [];

try {
  const line = readLine();
  if (line.help) console.log(USAGE);
  else
    run(
      await complete(line, () => {
        const [terminal = openTerminal()] = opened;
        opened[0] = terminal;
        return terminal;
      }),
    );
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
} finally {
  for (const terminal of opened) terminal.close();
}
