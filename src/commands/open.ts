/**
 * `npm run -s open -- FOLDER`: reads the order files of a folder (or one file), asks the shop again for each order's own
 * date, tells every difference from what the buyer saw, and writes one HTML file of printable papers an order, with its
 * attachments beside it. Exit status 0 when all is well, 2 when a file was refused or an order needs a look, 1 when
 * nothing was done. `--schema` prints the JSON Schema of an order file.
 */
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { loadCatalogue } from '../catalogue/load.ts';
import { printFaults } from '../catalogue/printFaults.ts';
import { readIdentities } from '../order/identities.ts';
import { orderJsonSchema } from '../order/orderSchema.ts';
import { shopVersion } from '../order/shopVersion.ts';
import { type Bench, type Outcome, openOrder, shownName } from './openOrder.ts';
import { type OrderFolder, orderFiles, readOrderFile } from './orderFiles.ts';

const USAGE = `npm run -s open -- FOLDER
  --identity FILE   a file of private keys, or - for standard input; may be given more than once
  --out FOLDER      where the papers go; otherwise "papers" in the folder of the orders
  --replace         write over papers that are there and differ
  --shop FOLDER     another content folder
  --schema          print the JSON Schema of an order file`;

/** Ends the command before anything is done. */
class Refused extends Error {}

const reasonOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

function readLine() {
  const options = {
    identity: { type: 'string', multiple: true, default: [] as string[] },
    out: { type: 'string' },
    replace: { type: 'boolean', default: false },
    shop: { type: 'string', default: 'content' },
    schema: { type: 'boolean', default: false },
  } as const;
  try {
    return parseArgs({ options, allowPositionals: true });
  } catch (error) {
    throw new Refused(`${reasonOf(error)}\n${USAGE}`);
  }
}

function keysOf(file: string): readonly string[] {
  const name = file === '-' ? 'Standard input' : file;
  let text: string;
  try {
    text = readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    throw new Refused(`The key file cannot be read: ${reasonOf(error)}`);
  }
  const read = readIdentities(text);
  if (read.ok) return read.identities;
  const why = {
    locked:
      'is itself locked with a passphrase. Unlock it on the way: age -d FILE | npm run -s open -- FOLDER --identity -',
    none: 'holds no private key. Expected a line that begins with AGE-SECRET-KEY-1.',
    line: `line ${read.line}, is neither a private key nor a remark. Expected AGE-SECRET-KEY-1 and 58 letters and digits.`,
    mistyped: `line ${read.line}, begins like a private key and has a typing error. Compare it letter by letter with the key that was printed: AGE-SECRET-KEY-1 and 58 capitals and digits.`,
  }[read.code];
  const atLine = read.code === 'line' || read.code === 'mistyped';
  throw new Refused(`${name}${atLine ? ',' : ''} ${why}`);
}

function loadShop(folder: string): Catalogue {
  const reading = loadCatalogue(folder);
  if (reading.ok) return reading.catalogue;
  throw new Refused(printFaults(reading.faults));
}

function listFiles(path: string): OrderFolder {
  try {
    return orderFiles(path);
  } catch (error) {
    throw new Refused(`The orders cannot be read: ${reasonOf(error)}`);
  }
}

async function open(path: string, values: ReturnType<typeof readLine>['values']): Promise<void> {
  const identities = values.identity.flatMap(keysOf);
  const files = listFiles(path);
  const catalogue = loadShop(values.shop);
  const out = values.out ?? join(files.folder, 'papers');
  mkdirSync(out, { recursive: true, mode: 0o700 });
  const version = await shopVersion(catalogue);
  const bench: Bench = { catalogue, version, identities, out, replace: values.replace, seen: new Map() };
  const counts: Record<Outcome['kind'], number> = { fine: 0, look: 0, same: 0, refused: 0 };
  for (const name of files.names) {
    const { kind, lines } = await openOrder(bench, name, readOrderFile(files, name));
    counts[kind] += 1;
    console.log([shownName(name), ...lines.map((line) => `  ${line.replaceAll('\n', '\n    ')}`)].join('\n'));
  }
  console.log(
    `${files.names.length} files: ${counts.fine + counts.look} orders, papers in ${shownName(out)}; ` +
      `${counts.look} need a look; ${counts.same} came twice; ${counts.refused} refused.`,
  );
  process.exitCode = counts.refused + counts.look > 0 ? 2 : 0;
}

try {
  const { values, positionals } = readLine();
  const [path, ...rest] = positionals;
  if (values.schema) console.log(JSON.stringify(orderJsonSchema(), null, 2));
  else if (path === undefined || rest.length > 0)
    throw new Refused(`Expected one folder, found ${positionals.length}.\n${USAGE}`);
  else await open(path, values);
} catch (error) {
  console.error(error instanceof Refused ? error.message : reasonOf(error));
  process.exitCode = 1;
}
