/**
 * `npm run check`: reads the content folder and prints every fault (status 1), or what the shop holds (status 0). A
 * sentence of the interface that another language of the shop lacks is a fault here, though the shop is built without
 * it; a text of the content that is not translated yet is told.
 * Another folder may be named: `npm run check -- --shop FOLDER`, or the folder alone.
 */
import { parseArgs } from 'node:util';
import { loadFolder, readFolder } from '../catalogue/load.ts';
import { printFault, printFaults } from '../catalogue/printFaults.ts';
import { wordFaults } from '../quote/wordFaults.ts';
import { staleEditorFiles } from './editorFiles.ts';
import { printUntranslated } from './untranslated.ts';
import { placeWordFaults } from './wordPlaces.ts';

function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

const USAGE = 'Usage: npm run check -- --shop FOLDER, or the folder alone';

/** The folder that was named; anything else on the line is a slip. */
function folderToCheck(): string {
  try {
    const options = { shop: { type: 'string', multiple: true } } as const;
    const { positionals, values } = parseArgs({ options, allowPositionals: true });
    const named = [...(values.shop ?? []), ...positionals];
    if (named.length <= 1) return named[0] ?? 'content';
    console.error(`Expected one folder at most, found ${named.length}. ${USAGE}`);
  } catch (error) {
    // The second sentence of the message is on arguments that begin with a hyphen.
    const reason = (error instanceof Error ? error.message : String(error)).replace(
      / To specify a positional.*$/s,
      '',
    );
    console.error(`${reason}\n${USAGE}`);
  }
  process.exit(1);
}

const folder = folderToCheck();
const read = loadFolder(folder);
const reading = readFolder(read);
const language = reading.ok ? reading.catalogue.shop.language : '';
const wrongWords = reading.ok ? wordFaults(reading.catalogue.words) : [];
const untranslated = reading.ok ? reading.untranslated : [];
const lacking = untranslated.filter(({ missingWords, words }) => missingWords.length + words.length > 0);

if (wrongWords.length > 0) {
  console.error(printFaults(placeWordFaults(read, language, wrongWords)));
  process.exitCode = 1;
} else if (reading.ok && lacking.length > 0) {
  console.error(untranslated.map(printUntranslated).join('\n\n'));
  process.exitCode = 1;
} else if (reading.ok) {
  for (const note of reading.notes) console.log(`${printFault(note)}\n`);
  for (const one of untranslated) if (one.texts.length > 0) console.log(`${printUntranslated(one)}\n`);
  const { shop, frames, designs, materials, tints, coatings, promotions, pages } = reading.catalogue;
  const sizes = frames.reduce((sum, frame) => sum + frame.sizes.length, 0);
  const holds = [
    `${count(frames.length, 'frame')} in ${count(sizes, 'size')}`,
    count(designs.length, 'design'),
    count(materials.length, 'material'),
    count(tints.length, 'tint'),
    count(coatings.length, 'coating'),
    count(promotions.length, 'promotion'),
    count(pages.length, 'page'),
  ];
  console.log(`${shop.name}: ${holds.join(', ')}. No faults.`);
  if ((staleEditorFiles(folder, shop) ?? []).length > 0)
    console.log('What editors are told of the fields is out of date: npm run schemas writes it again.');
} else {
  console.error(printFaults(reading.faults));
  process.exitCode = 1;
}
