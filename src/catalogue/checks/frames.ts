/** What a frame's own figures must agree on. Its outlines are checked where they are made (resolve/outline.ts). */

import { type AuthoredFrame, type AuthoredSize, type Check, faultsOf } from '../content.ts';
import type { FieldPath } from '../fault.ts';
import { listNames, nearest } from '../nearest.ts';
import { type Add, adding } from './adding.ts';

/** `51-19` says A and DBL, each rounded to whole millimetres. */
function checkSizeName(size: AuthoredSize, index: number, add: Add): void {
  const [a = 0, dbl = 0] = size.id.split('-').map(Number);
  if (Math.abs(size.aMm - a) <= 0.5 && Math.abs(size.dblMm - dbl) <= 0.5) return;
  const right = `${Math.round(size.aMm)}-${Math.round(size.dblMm)}`;
  const kept = size.id.slice(5);
  add(['sizes', index, 'id'], {
    code: 'size-disagrees',
    expected: `${right}, from a ${size.aMm} and dbl ${size.dblMm}, each rounded to whole mm`,
    received: size.id,
    hint: `Write ${right}${kept}, or mend a or dbl.`,
  });
}

function checkSizeNames({ sizes }: AuthoredFrame, add: Add): void {
  for (const [index, size] of sizes.entries()) checkSizeName(size, index, add);
}

function checkNotOffered(frame: AuthoredFrame, add: Add): void {
  const sizes = frame.sizes.map(({ id }) => id);
  const codes = frame.colourways.map(({ code }) => code);
  const check = (path: FieldPath, name: string, known: readonly string[], what: string) => {
    if (known.includes(name)) return;
    const meant = nearest(name, known);
    add(path, {
      code: 'unknown-reference',
      expected: `a ${what} of this frame: ${listNames(known)}`,
      received: `"${name}"`,
      hint: meant === null ? 'Use one of these.' : `Did you mean "${meant}"?`,
    });
  };
  for (const [index, { size, colourway }] of frame.notOffered.entries()) {
    check(['notOffered', index, 'size'], size, sizes, 'size');
    check(['notOffered', index, 'colourway'], colourway, codes, 'colourway');
  }
  const refused = new Set(frame.notOffered.map(({ size, colourway }) => `${size} ${colourway}`));
  if (!sizes.some((size) => codes.some((code) => !refused.has(`${size} ${code}`)))) {
    add(['notOffered'], {
      code: 'never-usable',
      expected: 'at least one size in one colourway that can be had',
      received: 'every size in every colourway is named here',
      hint: 'Remove a line of notOffered.',
    });
  }
}

function checkRim({ mounting, rimDepthMm, rimCoverMm }: AuthoredFrame, add: Add): void {
  if (mounting.kind === 'full' && rimDepthMm === 0) {
    add(['rimDepthMm'], {
      code: 'parts-disagree',
      expected: 'the depth of the rim, above 0 mm, since the mounting is full',
      received: '0',
      hint: 'Measure the rim from front to back.',
    });
  }
  if (mounting.kind === 'drilled' && rimCoverMm > 0) {
    add(['rimCoverMm'], {
      code: 'parts-disagree',
      expected: '0, since a drilled lens has no rim',
      received: String(rimCoverMm),
      hint: 'Write 0.',
    });
  }
}

/** Sizes against their names, pairs that are not offered, rims against mountings. */
export const checkFrames: Check = ({ frames }) =>
  faultsOf(frames, ...[checkSizeNames, checkNotOffered, checkRim].map(adding));
