import { expect, it } from 'vitest';
import { closingAdd } from '../../../src/configurator/entry/closingAdd.ts';
import { readPaste } from '../../../src/configurator/entry/readPaste.ts';

it.each([
  ['OD -2.00 -0.50 x 10\nOS -2.25 ADD +2.00', { add: '+2.00', read: 'left', other: 'right' }],
  ['OD -2.00 add +2.00\nOS -2.25 add +2.00', null],
  ['OD -2.00\nOS -2.25\nADD +2.00', null],
  ['OD -2.00 add +2.00 OS -2.25', null],
])('an add that ends the text is offered for both eyes: %s', (text, offered) => {
  const found = closingAdd(text, readPaste(text));
  if (offered === null) expect(found).toBeNull();
  else expect(found).toMatchObject({ read: offered.read, other: offered.other });
});
