import { describe, expect, it } from 'vitest';
import type { Words } from '../../src/catalogue/catalogue.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { tellFault } from '../../src/configurator/fieldFault.ts';
import type { Entries } from '../../src/configurator/fields.ts';
import { readEntries } from '../../src/configurator/readEntries.ts';
import { WANTED } from '../../src/optics/notation/fault.ts';
import { FAULT_CODES, FAULT_HINTS, FAULT_NOUNS, FAULT_UNITS, type Fault } from '../../src/quote/fault.ts';
import { eyeFaults, fitFaults, pairFaults } from '../../src/quote/plausible.ts';
import { DATE, frameOf, shop } from './shop.ts';

const reading = loadCatalogue('content');
const spoken = reading.ok ? [reading.catalogue, ...reading.translations] : [];
const words = (language: string): Words => {
  const found = spoken.find((one) => one.shop.language === language);
  if (found === undefined) throw new Error(`The shop does not speak ${language}.`);
  return found.words;
};

const box = { a: 10, b: 90, dbl: 50, mounting: 'full' as const };
const lenses = { use: 'none', design: null, material: null, tint: null, coating: null } as never;
/** One of each kind of fault, and of each noun, unit and hint. */
const FAULTS: readonly Fault[] = [
  ...[
    { sphere: -2.1, cylinder: -0.8, add: 1.3, axis: 12.5 },
    { sphere: 325, cylinder: -40, axis: 181, add: 22.5 },
    { sphere: -2, cylinder: -1 },
    { sphere: -2, axis: 90 },
    { cylinder: -1, axis: 90 },
    { sphere: 1, prism: [{ amount: 40, base: 400 }] },
  ].flatMap((eye) => eyeFaults(eye, 'right')),
  ...[
    { pd: 6.25, fittingHeight: { right: 80, left: 20 }, segmentHeight: { right: 2, left: 20 } },
    { pd: { right: 63.5, left: 31 }, vertexDistance: 120, pantoscopicTilt: 80, faceForm: 90 },
  ].flatMap((fit) => fitFaults(fit, 'fit')),
  ...pairFaults({ frame: box, prescription: null, lenses }, ''),
];

describe('a fault told in the words of a page', () => {
  it.each(['en', 'fr-CA'])('has a sentence for every kind, noun, unit and hint in %s', (language) => {
    const keys = [
      ...FAULT_CODES.flatMap((code) => [code, `${code}-expected`]),
      ...FAULT_NOUNS.map((noun) => `of.${noun}`),
      ...FAULT_UNITS.map((unit) => `unit.${unit}`),
      ...FAULT_HINTS.map((hint) => `hint.${hint}`),
    ].map((key) => `worksheet.fault.${key}`);
    const wanted = WANTED.map((code) => `worksheet.entry.paste.wanted.${code}`);
    expect([...keys, ...wanted].filter((key) => !Object.hasOwn(words(language), key))).toEqual([]);
  });

  it('says in English what the command says, but for its minus and its spelling', () => {
    for (const fault of FAULTS) {
      const { message, expected } = tellFault(words('en'), fault);
      expect(message).toBe(fault.message);
      expect(expected.replaceAll('\u2212', '-')).toBe(fault.expected.replace('dioptres', 'diopters'));
    }
  });

  it('is French on a French page, with its figures', () => {
    expect(FAULTS.every(({ told }) => told !== undefined)).toBe(true);
    const told = FAULTS.map((fault) => tellFault(words('fr-CA'), fault));
    expect(told.map(({ message, expected }) => `${message} ${expected}`).join('\n')).toMatchInlineSnapshot(`
      "La sphère s’écrit par quarts ou par huitièmes. un multiple de 0,25 ou de 0,125 D, comme −2,00
      Le cylindre s’écrit par quarts ou par huitièmes. un multiple de 0,25 ou de 0,125 D, comme −0,75
      L’addition s’écrit par quarts ou par huitièmes. un multiple de 0,25 ou de 0,125 D, comme 1,25
      L’axe est un nombre entier de degrés. de 1 à 180 (0 s’écrit 180)
      La sphère est hors des limites. de −30 à 30 D
      Le cylindre est hors des limites. de −12 à 12 D
      L’addition est hors des limites. de 0,25 à 4 D
      L’axe est hors des limites. de 1 à 180 (0 s’écrit 180)
      Un cylindre a besoin de son axe. de 1 à 180 degrés
      Il y a un axe sans cylindre. un cylindre à côté, ou pas d’axe
      Il y a un cylindre sans sphère. la sphère, 0 là où l’ordonnance dit plan
      Le prisme est hors des limites. de 0 à 20 dioptries prismatiques
      La direction de la base est hors des limites. interne, externe, supérieure, inférieure, ou de 0 à 360 degrés
      L’écart entre les pupilles est hors des limites. de 40 à 85 mm (vouliez-vous dire 62,5 ?)
      La hauteur de montage est hors des limites. de 5 à 60 mm (vouliez-vous dire 8 ?)
      La hauteur du segment est hors des limites. de 5 à 60 mm (vouliez-vous dire 20 ?)
      L’écart du milieu à la pupille est hors des limites. de 20 à 43 mm (63,5 est pour les deux yeux ensemble ; la moitié est 31,75)
      La distance vertex est hors des limites. de 5 à 25 mm (vouliez-vous dire 12 ?)
      L’angle pantoscopique est hors des limites. de −10 à 25 degrés
      Le galbe est hors des limites. de −5 à 35 degrés
      A, la largeur du verre, est hors des limites. de 30 à 75 mm
      B, la hauteur du verre, est hors des limites. de 18 à 65 mm
      DBL, le pont, est hors des limites. de 8 à 30 mm"
    `);
  });

  it('is French at its field, where the other eye is still to come and where a base is', () => {
    const typed: Entries = {
      'right.sphere': '-31',
      'left.cylinder': '-0.8',
      'pd.right': '3.15',
      'left.prism1.amount': '50',
    };
    const data = { ...shop, words: words('fr-CA') };
    const { faults } = readEntries(typed, { frame: frameOf('sanderling'), data, date: DATE });
    expect(faults.length).toBeGreaterThan(6);
    for (const { message, expected } of faults)
      expect(`${message} ${expected}`).not.toMatch(/\b(?:the|is|of|to|and|you|without|a number)\b/i);
  });
});
