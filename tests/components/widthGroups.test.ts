import { expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { widthGroups } from '../../src/components/widthGroups.ts';

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demo has faults.');
const { frames } = reading.catalogue;

it('puts every size into one group, in the order of lens widths', () => {
  const lines = widthGroups(frames).flatMap((group) => group.lines);
  expect(lines.length).toBe(frames.flatMap(({ sizes }) => sizes).length);
  const widths = lines.map(({ size }) => size.aMm);
  expect(widths).toEqual(widths.toSorted((a, b) => a - b));
});
