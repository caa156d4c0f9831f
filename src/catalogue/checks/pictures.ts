/** Photographs: each that a frame names is there, and each file is what its name says and of a size to work with. */
import { type AuthoredFrame, type Check, faultsOf, type Sound } from '../content.ts';
import type { ContentFault, FaultDetail } from '../fault.ts';
import { listNames, nearest } from '../nearest.ts';
import { faultAt } from '../reading/entry.ts';
import { kindOfName, type PictureFile } from '../reading/pictureKind.ts';
import { faultOfFile } from '../reading/sourceText.ts';

const MOST_MB = 12;

/** A camera's JPEG has up to 10 MB or so; more only slows the build. */
const MOST_BYTES = MOST_MB * 1_000_000;

function fileFault({ path, name, found, sizeBytes }: PictureFile): ContentFault[] {
  const said = kindOfName(name);
  if (sizeBytes > MOST_BYTES) {
    const detail: FaultDetail = {
      code: 'too-large',
      expected: `a picture of at most ${MOST_MB} MB`,
      received: `${(sizeBytes / 1_000_000).toFixed(1)} MB`,
      hint: 'Save it smaller: 2000 pixels of width are enough.',
    };
    return [faultOfFile(path, detail)];
  }
  if (found === said) return [];
  const detail: FaultDetail = {
    code: 'not-a-picture',
    expected: `a ${said} picture, as the ending says`,
    received:
      sizeBytes === 0 ? 'an empty file' : found === null ? 'a file of another kind' : `a ${found} picture`,
    hint:
      found === null
        ? 'Save it again as JPEG, PNG, WebP or AVIF.'
        : `Rename it so that it ends with .${found}.`,
  };
  return [faultOfFile(path, detail)];
}

function frameFaults({ origin, value }: Sound<AuthoredFrame>, names: readonly string[]): ContentFault[] {
  const codes = value.colourways.map(({ code }) => code);
  return value.pictures.flatMap(({ file, colourway }, index) => {
    const faults: ContentFault[] = [];
    if (!names.includes(file)) {
      const meant = nearest(file, names);
      const detail: FaultDetail = {
        code: 'missing-picture',
        expected: `a file in frames/pictures: ${listNames(names)}`,
        received: `"${file}"`,
        hint: meant === null ? 'Put the file there, or remove this picture.' : `Did you mean "${meant}"?`,
      };
      faults.push(faultAt(origin, ['pictures', index, 'file'], detail));
    }
    if (colourway !== null && !codes.includes(colourway)) {
      const meant = nearest(colourway, codes);
      const detail: FaultDetail = {
        code: 'unknown-reference',
        expected: `a colourway of this frame: ${listNames(codes)}`,
        received: `"${colourway}"`,
        hint: meant === null ? 'Use one of these, or leave it out.' : `Did you mean "${meant}"?`,
      };
      faults.push(faultAt(origin, ['pictures', index, 'colourway'], detail));
    }
    return faults;
  });
}

/** Files of frames/pictures, and what frames say of them. */
export const checkPictures: Check = ({ frames, pictures }) => {
  const names = pictures.map(({ name }) => name);
  return [...pictures.flatMap(fileFault), ...faultsOf(frames, (frame) => frameFaults(frame, names))];
};
