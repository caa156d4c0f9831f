/**
 * `npm run schemas`: writes the JSON Schemas that editors take their help from into `content/.schemas`. Another content
 * folder may be named: `npm run schemas -- FOLDER`. Exit status 0 when they are there, 1 when nothing was written.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { loadCatalogue } from '../catalogue/load.ts';
import { printFaults } from '../catalogue/printFaults.ts';
import { editorFiles, SCHEMAS } from './editorFiles.ts';
import { writeWhole } from './writeWhole.ts';

const USAGE = 'Usage: npm run schemas -- FOLDER';

function folderNamed(): string {
  try {
    const { positionals } = parseArgs({ allowPositionals: true });
    if (positionals.length <= 1) return positionals[0] ?? 'content';
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : error}\n${USAGE}`);
  }
  throw new Error(`Expected one folder at most.\n${USAGE}`);
}

try {
  const folder = folderNamed();
  const reading = loadCatalogue(folder);
  // The prices in them are those of the shop's currency.
  if (!reading.ok) throw new Error(printFaults(reading.faults));
  mkdirSync(join(folder, SCHEMAS), { recursive: true });
  const files = editorFiles(folder, reading.catalogue.shop);
  for (const { path, text } of files) writeWhole(path, text, 0o644);
  console.log(
    `${files.length} schemas are in ${join(folder, SCHEMAS)}. An editor finds them by the first line of a file.`,
  );
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
