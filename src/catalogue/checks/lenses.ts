/** What the fields of one lens option must agree on. */
import {
  type AuthoredCoating,
  type AuthoredDesign,
  type AuthoredMaterial,
  type AuthoredTint,
  type Check,
  faultsOf,
} from '../content.ts';
import type { FaultDetail, FieldPath } from '../fault.ts';
import { type Add, adding } from './adding.ts';

function disagree(expected: string, received: string, hint: string): FaultDetail {
  return { code: 'parts-disagree', expected, received, hint };
}

/** Only a lens without power is for no use. */
function checkUses({ kind, uses }: AuthoredDesign, add: Add): void {
  if (kind === 'plano' ? uses.join() !== 'none' : uses.includes('none')) {
    const expected =
      kind === 'plano' ? '[none], since kind is plano' : 'uses other than none, which is for kind: plano';
    add(['uses'], disagree(expected, `[${uses.join(', ')}]`, 'Change uses, or kind.'));
  }
}

/** A design has what its kind needs, and no part of another kind. */
function checkParts({ kind, corridor, segment, addD }: AuthoredDesign, add: Add): void {
  const wants = {
    corridor: kind === 'progressive' || kind === 'office',
    segment: kind === 'bifocal',
    addD: kind === 'progressive' || kind === 'office' || kind === 'bifocal',
  };
  const has = { corridor: corridor !== null, segment: segment !== null, addD: addD !== null };
  for (const part of ['corridor', 'segment', 'addD'] as const) {
    if (wants[part] === has[part]) continue;
    add(
      has[part] ? [part] : ['kind'],
      wants[part]
        ? disagree(`${part} besides kind: ${kind}`, `no ${part}`, `Add ${part}, or change kind.`)
        : disagree(`no ${part} with kind: ${kind}`, `${part} is given`, `Remove ${part}, or change kind.`),
    );
  }
}

/** Index of the first value that is not above the one before it, or -1. */
function firstFall(values: readonly number[]): number {
  return values.findIndex(
    (value, index) => index > 0 && value <= (values[index - 1] ?? Number.NEGATIVE_INFINITY),
  );
}

function checkAscending(
  values: readonly number[],
  path: (index: number) => FieldPath,
  what: string,
  add: Add,
) {
  const index = firstFall(values);
  if (index === -1) return;
  add(path(index), {
    code: 'not-ascending',
    expected: `${what} in ascending order, above ${values[index - 1]}`,
    received: String(values[index]),
    hint: 'Sort the list, and leave out what is there twice.',
  });
}

function checkIndexes(material: AuthoredMaterial, add: Add): void {
  if (material.ne < material.nd) {
    const hint = 'Exchange nd and ne if they are mixed up.';
    add(
      ['ne'],
      disagree(`at least nd, ${material.nd}: the index grows towards the blue`, String(material.ne), hint),
    );
  }
}

/** Least thickness is said of every mounting that the material is made for. */
function checkMountings(material: AuthoredMaterial, add: Add): void {
  for (const [mounting, part] of [
    ['grooved', 'groove'],
    ['drilled', 'hole'],
  ] as const) {
    if (material.mountings.includes(mounting) === (material.leastMm[part] !== null)) continue;
    const given = material.leastMm[part] !== null;
    const found = given
      ? `leastMm.${part} without the mounting ${mounting}`
      : `${mounting} without leastMm.${part}`;
    const expected = `leastMm.${part} and the mounting ${mounting}, both or neither`;
    add(
      given ? ['leastMm', part] : ['mountings'],
      disagree(expected, found, 'Add what is missing, or remove the other.'),
    );
  }
}

/** Forms of stock lenses reach the strongest plus of their range. */
function checkBlanks(material: AuthoredMaterial, add: Add): void {
  if (material.stock.length === 0 && material.surfaced === null) {
    add(
      ['surfaced'],
      disagree('stock or surfaced lenses', 'neither', 'Say what can be ordered in this material.'),
    );
  }
  for (const [index, stock] of material.stock.entries()) {
    const tops = stock.forms.map(({ toD }) => toD);
    checkAscending(tops, (form) => ['stock', index, 'forms', form, 'toD'], 'spherical equivalents', add);
    // The strongest plus of the grid is its highest sphere without a cylinder: cylinders are minus.
    const last = tops.at(-1) ?? 0;
    if (last < stock.sphereD.to) {
      const expected = `a last form up to ${stock.sphereD.to} D at least, since sphereD reaches it`;
      add(
        ['stock', index, 'forms', tops.length - 1, 'toD'],
        disagree(expected, String(last), 'Add a form, or shorten sphereD.'),
      );
    }
  }
  const { surfaced } = material;
  if (surfaced === null) return;
  const powers = surfaced.baseCurves.map(({ powerD }) => powerD);
  checkAscending(powers, (curve) => ['surfaced', 'baseCurves', curve], 'base curves', add);
  checkAscending(surfaced.diametersMm, (blank) => ['surfaced', 'diametersMm', blank], 'diameters', add);
}

function checkStates({ kind, states }: AuthoredTint, add: Add): void {
  const least = kind === 'photochromic' || kind === 'gradient' ? 2 : 1;
  if (states.length < least) {
    const what = kind === 'gradient' ? 'its top and its foot' : 'clear and dark at least';
    add(
      ['states'],
      disagree(`${least} states of a ${kind} tint: ${what}`, String(states.length), 'Add the states.'),
    );
  }
  if (kind === 'photochromic') {
    for (const [index, { temperatureC }] of states.entries()) {
      if (temperatureC !== null) continue;
      const expected = 'temperatureC in each state of a photochromic tint';
      add(
        ['states', index],
        disagree(expected, 'none', 'Write the lens temperature, such as temperatureC: 23.'),
      );
    }
  }
}

function checkSurface({ kind, polarised, mirrored }: AuthoredTint, add: Add): void {
  if (kind === 'polarised' && polarised === false)
    add(['polarised'], disagree('true, since kind is polarised', 'false', 'Write true, or change kind.'));
  if (kind === 'mirror' && mirrored === false)
    add(['mirrored'], disagree('true, since kind is mirror', 'false', 'Write true, or change kind.'));
}

function checkCoating({ faces, residualReflectance }: AuthoredCoating, add: Add): void {
  if ((faces === 'none') === (residualReflectance === null)) return;
  const expected =
    faces === 'none'
      ? 'null, since no face is coated'
      : 'the reflectance left on a coated face, such as 0.01';
  add(
    ['residualReflectance'],
    disagree(expected, String(residualReflectance ?? 'nothing'), 'Change it, or change faces.'),
  );
}

/** Each option by itself. */
export const checkLenses: Check = ({ designs, materials, tints, coatings }) => [
  ...faultsOf(designs, ...[checkUses, checkParts].map(adding)),
  ...faultsOf(materials, ...[checkIndexes, checkMountings, checkBlanks].map(adding)),
  ...faultsOf(tints, ...[checkStates, checkSurface].map(adding)),
  ...faultsOf(coatings, adding(checkCoating)),
];
