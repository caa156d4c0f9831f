/**
 * `npm run schemas`: writes the JSON Schemas that editors take their help from into `content/.schemas`, and the line that
 * names its schema into content files, and the costs beside them, that have none. Another content folder: `npm run schemas -- FOLDER`. Exit status 0 when they are there, 1 when nothing was written.
 */
import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { loadFolder, readFolder } from '../catalogue/load.ts';
import { printFaults } from '../catalogue/printFaults.ts';
import { editorFiles, SCHEMAS } from './editorFiles.ts';
import { costsSchemaLine, withLine, withSchemaLine } from './schemaLine.ts';
import { writeAll } from './writeAll.ts';

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

/** The costs, where there are any and they lack the line. */
function headedCosts(folder: string) {
  const path = join(dirname(folder), 'costs.yaml');
  const line = costsSchemaLine(basename(resolve(folder)));
  const text = existsSync(path) ? withLine(line, path, readFileSync(path, 'utf8')) : null;
  return text === null ? [] : [{ path, text, fresh: false }];
}

try {
  const folder = folderNamed();
  const content = loadFolder(folder);
  const reading = readFolder(content);
  // The prices in them are those of the shop's currency.
  if (!reading.ok) throw new Error(printFaults(reading.faults));
  const files = editorFiles(folder, reading.catalogue.shop).map((file) => ({ ...file, fresh: false }));
  const headed = content.files.flatMap(({ path, bytes }) => {
    const inside = path.slice(content.name.length + 1);
    const text = withSchemaLine(inside, new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes));
    return text === null ? [] : [{ path: join(folder, inside), text, fresh: false }];
  });
  headed.push(...headedCosts(folder));
  writeAll([...files, ...headed]);
  console.log(
    `${files.length} schemas are in ${join(folder, SCHEMAS)}. An editor finds them by the first line of a file.`,
  );
  for (const { path } of headed) console.log(`${path} has that line now.`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
