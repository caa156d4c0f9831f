import { expect, it } from 'vitest';
import { contactLensFigures } from '../../../src/configurator/entry/contactLens.ts';
import { readPaste } from '../../../src/configurator/entry/readPaste.ts';

it.each([
  ['OD -2.25 BC 8.6 DIA 14.2\nOS -2.00 BC 8.6 DIA 14.2'],
  ['R -2.25 8.6 / 14.2; L -2.00 8.6 / 14.2'],
  ['OD -2.25 -0.75 x 180 base curve: 8,4 mm diameter 14,5'],
])('tells contact lenses by base curve and diameter: %j', (text) => {
  expect(contactLensFigures(text)).not.toEqual([]);
  const { kind, entries } = readPaste(text);
  expect(kind).toBe('contact-lens');
  expect(entries).toEqual({});
});

it.each([
  // A base curve of glasses is in dioptres, and a PD is never on a prescription for contact lenses.
  ['OD -2.25 -0.75 x 170\nOS -2.00 -0.50 x 10\nPD 63\nBC 6.00'],
  ['OD -8.25 -0.75 x 170\nOS -8.50 -0.50 x 10'],
  ['OD +1.50 add +2.50 1.5 BI\nOS +1.75 add +2.50'],
])('takes none of these for contact lenses: %j', (text) => {
  expect(contactLensFigures(text)).toEqual([]);
});
