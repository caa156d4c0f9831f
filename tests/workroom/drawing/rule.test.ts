import { expect, test } from 'vitest';
import { printedRule } from '../../../src/workroom/drawing/rule.ts';

test('the rule is 100 of its own units long, and a unit is a millimetre', () => {
  const { markup } = printedRule('100 mm & no more');
  expect(markup).toContain('width="104mm" height="10mm" viewBox="-2 -0.5 104 10"');
  expect(markup).toContain('d="M0 0h100');
  expect(markup.match(/M\d+ 0v/g)).toHaveLength(101);
  expect(markup).toContain('100 mm &amp; no more');
});
