/**
 * `npm run keys`: makes the pair of keys that orders are sealed with. The public half goes into shop.yaml, the private
 * half is printed once (or, with `--save FILE`, written there) and kept nowhere. `--rotate` adds a pair beside those
 * that are there; `--retire PUBLICKEY` takes one out. Exit status 0 when done, 1 when nothing was changed.
 */
import { readFileSync, statSync } from 'node:fs';
import { isAbsolute, join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { loadCatalogue } from '../catalogue/load.ts';
import { printFaults } from '../catalogue/printFaults.ts';
import { makeKeys } from '../order/seal.ts';
import { withoutPublicKey, withPublicKey } from './editPublicKeys.ts';
import { PRIVATE, writeNew, writeWhole } from './writeWhole.ts';

const USAGE = `npm run keys                      the first pair of keys
npm run keys -- --rotate          one more pair; files are sealed to all of them
npm run keys -- --retire PUBLIC   take a public half out of the shop
  --save FILE    write the private half to a new file instead of the terminal
  --shop FOLDER  another content folder`;

/** Ends the command without a change. */
class Refused extends Error {}

function readLine() {
  const options = {
    rotate: { type: 'boolean', default: false },
    retire: { type: 'string' },
    save: { type: 'string' },
    shop: { type: 'string', default: 'content' },
  } as const;
  try {
    const { values } = parseArgs({ options });
    if (values.retire === undefined || !(values.rotate || values.save)) return values;
  } catch (error) {
    throw new Refused(`${error instanceof Error ? error.message : error}\n${USAGE}`);
  }
  throw new Refused(
    `--retire stands alone: first add a pair, publish the shop, and retire the old one later.\n${USAGE}`,
  );
}

function loadKeys(folder: string): readonly string[] {
  const reading = loadCatalogue(folder);
  if (!reading.ok) throw new Refused(printFaults(reading.faults));
  return reading.catalogue.shop.order.publicKeys;
}

const reasonOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** Writes shop.yaml, keeping who may read it. */
function writeShop(file: string, text: string): void {
  writeWhole(file, text, statSync(file).mode & 0o777);
}

function saveKey(file: string, content: string): void {
  const fromHere = relative(process.cwd(), resolve(file));
  if (!fromHere.startsWith('..') && !isAbsolute(fromHere))
    throw new Refused(
      `${file} lies in the project's folder, from where it could be published with the shop.\n` +
        'Expected a file elsewhere, such as one on a stick. Nothing was changed.',
    );
  try {
    writeNew(file, content, PRIVATE);
  } catch (error) {
    throw new Refused(
      `The key cannot be written to ${file}: ${reasonOf(error)}\nNothing was changed. Name a new file.`,
    );
  }
}

async function make(shop: string, save: string | undefined): Promise<void> {
  const file = join(shop, 'shop.yaml');
  const { identity, recipient } = await makeKeys();
  const text = withPublicKey(readFileSync(file, 'utf8'), recipient);
  if (text === null)
    throw new Refused(
      `${file} has no place where a key can be added without touching the rest.\n` +
        'Write it so, then run this again; nothing was changed:\n\norder:\n  publicKeys: []',
    );
  const content = `# Private key of the workshop's orders. Public half: ${recipient}\n${identity}\n`;
  if (save === undefined) console.log(`The private half, shown this once and kept nowhere:\n\n${content}`);
  else {
    saveKey(save, content);
    console.log(`The private half is in ${save}, which only you can read.\n`);
  }
  try {
    writeShop(file, text);
  } catch (error) {
    throw new Refused(
      `${file} cannot be written: ${reasonOf(error)}\nThe key above is not in use: throw it away.`,
    );
  }
  console.log(`Keep it as you keep the key of the workshop's door:
  - two copies, such as a file on a stick in the safe and an entry in a password manager;
  - never in this project's folder, in a mail or on the website;
  - nobody can open an order without it, and it cannot be made again.

The public half is in ${file}:

${recipient}

Publish the shop again: from then on its order files are sealed. To open a folder of them:
  npm run open -- FOLDER --identity KEYFILE
A key file holds the line AGE-SECRET-KEY-1..., as above.`);
}

function retire(shop: string, keys: readonly string[], key: string): void {
  const listed = keys.map((one) => `  ${one}`).join('\n');
  if (!keys.includes(key))
    throw new Refused(
      `The shop has no public key ${key}. Nothing was changed. It has:\n${listed || '  none'}`,
    );
  if (keys.length === 1)
    throw new Refused(
      'This is the only key: without it orders would not be sealed. Nothing was changed.\n' +
        'Add another first: npm run keys -- --rotate',
    );
  const file = join(shop, 'shop.yaml');
  const text = withoutPublicKey(readFileSync(file, 'utf8'), key);
  if (text === null)
    throw new Refused(
      `The key cannot be taken out of ${file} without touching the rest. Remove its line by hand.`,
    );
  writeShop(file, text);
  console.log(`${key}\nis out of ${file}. Publish the shop again.
Keep its private half as long as you keep orders that were sealed before: only it opens them.`);
}

try {
  const { shop, rotate, retire: retired, save } = readLine();
  const keys = loadKeys(shop);
  if (retired !== undefined) retire(shop, keys, retired);
  else if (keys.length === 0 || rotate) await make(shop, save);
  else
    throw new Refused(
      `The shop has a key already, and nothing was changed:\n${keys.map((key) => `  ${key}`).join('\n')}\n` +
        'To add one and keep the old: npm run keys -- --rotate\nTo take one out: npm run keys -- --retire PUBLICKEY',
    );
} catch (error) {
  console.error(error instanceof Refused ? error.message : reasonOf(error));
  process.exitCode = 1;
}
