/** Files that a shop cannot do without. */
import { type Check, sound } from '../content.ts';
import type { ContentFault } from '../fault.ts';
import { listNames } from '../nearest.ts';
import type { Origin } from '../reading/origin.ts';
import { faultIn, faultOfFile } from '../reading/sourceText.ts';

function missing(file: string, expected: string): ContentFault {
  return faultOfFile(file, {
    code: 'missing-file',
    expected,
    received: 'nothing',
    hint: 'Add the file; the demonstration shop has one to copy.',
  });
}

/** shop.yaml, a frame, a design, a material, the words of the shop's language, and a text on each page. */
export const checkFiles: Check = (content) => {
  const { root, shop } = content;
  const faults: ContentFault[] = [];
  if (shop === null) faults.push(missing(`${root}/shop.yaml`, 'the file about the shop'));
  if (content.frames.length === 0)
    faults.push(missing(`${root}/frames`, 'a frame at least, such as frames/dunlin.md'));
  if (content.designs.length === 0) faults.push(missing(`${root}/lenses/designs`, 'a design at least'));
  if (content.materials.length === 0) faults.push(missing(`${root}/lenses/materials`, 'a material at least'));
  const language = shop?.value?.language;
  if (language !== undefined && !content.words.some((words) => words.language === language)) {
    faults.push(
      missing(
        `${root}/words/${language}`,
        `the words of the shop's language, such as words/${language}/page.yaml`,
      ),
    );
  }
  return [...faults, ...sound(content.pages).flatMap(({ id, origin }) => pageFaults(id, origin))];
};

/** Pages of the site that are not prose. */
const TAKEN = [
  '404',
  '500',
  'basket',
  'collections',
  'feeds',
  'frames',
  'frames-by',
  'index',
  'lenses',
  'measuring-rule',
  'order',
  'promotions',
  'reasons',
  'share',
  'workroom',
  'your-frame',
];

function pageFaults(id: string, { source, body }: Origin): ContentFault[] {
  const faults: ContentFault[] = [];
  if (TAKEN.includes(id)) {
    const detail = {
      code: 'taken-address',
      expected: `a file name other than ${listNames(TAKEN)}`,
      received: `"${id}.md"`,
      hint: 'Rename the file.',
    } as const;
    faults.push(faultOfFile(source.path, detail));
  }
  if (body.trim() === '') {
    const end = source.text.trimEnd().length;
    const detail = {
      code: 'empty-body',
      expected: 'the text of the page below its fields',
      received: 'nothing',
      hint: 'Write the text below the second line ---.',
    } as const;
    faults.push(faultIn(source, end - 3, end, [], detail));
  }
  return faults;
}
