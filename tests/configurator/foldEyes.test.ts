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

it('tells both eyes in one sentence, with both figures where only they differ', () => {
  const folded = foldEyes(shop.words, [
    finding('right', 'vertex-distance', '5 D.'),
    finding('right', 'edge-beyond-rim', '3 mm.'),
    finding('left', 'vertex-distance', '5 D.'),
    finding('left', 'edge-beyond-rim', '4 mm.'),
  ]);
  expect(folded.map(({ message }) => message)).toEqual(['Both eyes: 5 D.', 'Right and left: 3 and 4 mm.']);
});

it('leaves sentences apart where a pair of figures no longer says which belong together', () => {
  const apart = (right: string, left: string) => {
    const found = [finding('right', 'a', right), finding('left', 'a', left)];
    expect(foldEyes(shop.words, found)).toEqual(found);
  };
  apart('8.12 mm at its thickest (temple side, above).', '6.34 mm at its thickest (below).');
  apart('the edge runs from 2.09 to 3.78 mm.', 'the edge runs from 2.08 to 3.57 mm.');
});

it('leaves two powers as written, and two sentences, apart', () => {
  const powers = [
    finding('right', 'as-worn', 'ordered as \u22128.22 \u22120.10 \u00d7 90.'),
    finding('left', 'as-worn', 'ordered as \u22128.10 \u22120.12 \u00d7 88.'),
  ];
  expect(foldEyes(shop.words, powers)).toEqual(powers);
  const sentences = [
    finding('right', 'blank-too-small', 'Short.'),
    finding('left', 'blank-too-small', 'Too short.'),
  ];
  expect(foldEyes(shop.words, sentences)).toEqual(sentences);
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
