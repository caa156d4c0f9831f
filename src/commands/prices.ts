/**
 * `npm run prices`: what a change does, before anybody else sees it. Compares the files as they are with the last
 * commit, or with `--since COMMIT` or `--since YYYY-MM-DD` (the shop as that day began); shows promotions in time, pairs
 * that would sell under cost and prices that end otherwise than the shop's do. Exit status 0: told, nothing to mend; 2:
 * a join that one side alone declares, a pair under cost, or an odd ending; 1: it could not be told.
 */
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { civilDateAt, isCivilDate } from '../catalogue/civilDate.ts';
import { loadCatalogue } from '../catalogue/load.ts';
import { printFaults } from '../catalogue/printFaults.ts';
import { wordFaults } from '../quote/wordFaults.ts';
import { readCosts } from './prices/costs.ts';
import { csvOf } from './prices/csv.ts';
import { pastShop } from './prices/pastShop.ts';
import { printReport } from './prices/print.ts';
import { type Against, needsALook, pricesReport } from './prices/report.ts';

const USAGE =
  'Usage: npm run -s prices -- [--since COMMIT or YYYY-MM-DD] [--date YYYY-MM-DD] [--json or --csv] ' +
  '[--shop FOLDER] [--costs FILE]';

/** What cannot be told ends here, with status 1. */
function refuse(...lines: readonly string[]): never {
  console.error(lines.join('\n'));
  process.exit(1);
}

function readCommandLine() {
  try {
    const text = { type: 'string' } as const;
    const flag = { type: 'boolean' } as const;
    const options = { since: text, date: text, shop: text, costs: text, json: flag, csv: flag };
    return parseArgs({ options }).values;
  } catch (error) {
    return refuse(error instanceof Error ? error.message : String(error), USAGE);
  }
}

/** The shop to compare with. Where nobody asked for one by name, its lack is told in the report. */
function readAgainst(folder: string, since: string | undefined, timeZone: string): Against {
  const past = pastShop(folder, since ?? 'HEAD', timeZone);
  if (!past.ok) return since === undefined ? { notCompared: past.why } : refuse(past.why);
  const { commit, reading } = past;
  if (reading.ok) return { commit, catalogue: reading.catalogue };
  const { faults } = reading;
  const why =
    `The shop of commit ${commit.id.slice(0, 7)} has ${faults.length} faults for this version of the program ` +
    `(the first: ${faults[0]?.file}:${faults[0]?.line}, ${faults[0]?.expected} expected). Name a later commit.`;
  return since === undefined ? { notCompared: why } : refuse(why);
}

const { since, date: asked, shop: folder = 'content', json, csv, costs: costsFile } = readCommandLine();
if (json && csv) refuse('Expected --json or --csv, found both.', USAGE);
if (asked !== undefined && !isCivilDate(asked))
  refuse(`--date: expected a day as YYYY-MM-DD, found "${asked}".`, USAGE);
const loaded = loadCatalogue(folder);
if (!loaded.ok) refuse(printFaults(loaded.faults));
const { catalogue } = loaded;
const unsaid = wordFaults(catalogue.words);
if (unsaid.length > 0)
  refuse(
    ...unsaid.map(
      ({ key, message, expected }) => `${folder}/words: ${key}: ${message}\n  expected: ${expected}`,
    ),
  );
const { timeZone } = catalogue.shop;
const costs = readCosts(costsFile ?? join(dirname(folder), 'costs.yaml'), catalogue);
if (!costs.ok) refuse(printFaults(costs.faults));
const today = civilDateAt(Date.now(), timeZone);
const report = pricesReport(catalogue, readAgainst(folder, since, timeZone), costs.costs, asked ?? today);
if (costs.warning !== null) console.error(costs.warning);
console.log(json ? JSON.stringify(report, null, 2) : csv ? csvOf(report).trimEnd() : printReport(report));
if (needsALook(report)) process.exitCode = 2;
