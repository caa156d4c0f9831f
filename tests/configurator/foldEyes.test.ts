import fc from 'fast-check';
import { expect, it } from 'vitest';
import { foldEyes } from '../../src/configurator/foldEyes.ts';
import type { Finding } from '../../src/quote/answer.ts';
import { shop } from './shop.ts';

const EYES = { right: 'Right eye', left: 'Left eye', both: 'Both eyes' } as const;

const finding = (eye: Finding['eye'], rule: string, text: string): Finding => ({
  rule,
  level: 'caution',
  eye,
  figures: {},
  message: `${EYES[eye]}: ${text}`,
  remedy: null,
});

it('tells once what both eyes have in common, and each eye what is its own', () => {
  const folded = foldEyes(shop.words, [
    finding('right', 'vertex-distance', '5 D.'),
    finding('right', 'edge-beyond-rim', '3 mm.'),
    finding('left', 'vertex-distance', '5 D.'),
    finding('left', 'edge-beyond-rim', '4 mm.'),
  ]);
  expect(folded.map(({ message }) => message)).toEqual([
    'Both eyes: 5 D.',
    'Right eye: 3 mm.',
    'Left eye: 4 mm.',
  ]);
});

it('loses no rule, adds none, and folds nothing twice', () => {
  const one = fc.record({
    eye: fc.constantFrom('right', 'left', 'both') as fc.Arbitrary<Finding['eye']>,
    rule: fc.constantFrom('a', 'b'),
    text: fc.constantFrom('1', '2'),
  });
  fc.assert(
    fc.property(fc.array(one, { maxLength: 8 }), (all) => {
      const findings = all.map(({ eye, rule, text }) => finding(eye, rule, text));
      const folded = foldEyes(shop.words, findings);
      expect(new Set(folded.map(({ rule }) => rule))).toEqual(new Set(findings.map(({ rule }) => rule)));
      expect(foldEyes(shop.words, folded)).toEqual(folded);
    }),
  );
});
