/** Pictures in the Markdown of any file must be the shop's own. */
import type { Check, Content } from '../content.ts';
import type { ContentFault } from '../fault.ts';
import { outsidePictures } from '../reading/markdown.ts';
import type { Origin } from '../reading/origin.ts';
import { faultIn } from '../reading/sourceText.ts';

function allOrigins(content: Content): Origin[] {
  const { frames, designs, materials, tints, coatings, promotions, pages, translations } = content;
  const own = [frames, designs, materials, tints, coatings, promotions, pages].flat();
  return [...own, ...translations.map(({ entry }) => entry)].map(({ origin }) => origin);
}

function pictureFaults({ source, body }: Origin): ContentFault[] {
  const bodyAt = source.text.length - body.length;
  return outsidePictures(body).map((src) => {
    // Markdown may have written the address another way; then its text as a whole is meant.
    const at = Math.max(bodyAt, source.text.indexOf(src, bodyAt));
    const detail = {
      code: 'outside-picture',
      expected: 'a picture of this site, such as /pictures/bench.jpg',
      received: src,
      hint: 'Put the picture into the folder public and name it by its path there.',
    } as const;
    return faultIn(source, at, at + src.length, [], detail);
  });
}

/** Pictures that would be fetched from elsewhere. */
export const checkTexts: Check = (content) => allOrigins(content).flatMap(pictureFaults);
