/**
 * `npm run check`: reads the content folder and prints every fault (status 1), or what the shop holds (status 0).
 * Another folder may be named: `npm run check -- FOLDER`.
 */
import { parseArgs } from 'node:util';
import { loadCatalogue } from '../catalogue/load.ts';
import { printFaults } from '../catalogue/printFaults.ts';

function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

const { positionals } = parseArgs({ allowPositionals: true });
const reading = loadCatalogue(positionals[0] ?? 'content');

if (reading.ok) {
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
} else {
  console.error(printFaults(reading.faults));
  process.exitCode = 1;
}
