/** What holds of both eyes is told once: in one sentence where it is the same, with both figures where one differs. */
import type { Words } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Finding } from '../quote/answer.ts';

/** The findings with each of one eye that the other has too folded into one of both, in the place of the first. */
export function foldEyes(words: Words, findings: readonly Finding[]): readonly Finding[] {
  const folded = new Map<Finding, Finding | null>();
  for (const right of findings.filter(({ eye }) => eye === 'right'))
    for (const left of findings.filter(({ eye }) => eye === 'left')) {
      if (folded.has(right) || folded.has(left)) continue;
      if (left.rule !== right.rule || left.level !== right.level) continue;
      const message = together(words, right.message, left.message);
      if (message === null) continue;
      folded.set(right, { ...right, eye: 'both', message });
      folded.set(left, null);
    }
  return findings.flatMap((finding) => {
    const found = folded.get(finding);
    return found === null ? [] : [found ?? finding];
  });
}

/** A number in a sentence. */
const FIGURE = /[+\u2212-]?\d+(?:[.,]\d+)?/gu;

/**
 * One sentence for both eyes; null where more than one figure differs, since pairs of figures no longer say which
 * belong together, or where the figures belong to a written lens.
 */
function together(words: Words, right: string, left: string): string | null {
  const bare = (message: string, eye: Finding['eye']) => message.replace(say(words, `eye.${eye}`), '\u0000');
  const [one, other] = [bare(right, 'right'), bare(left, 'left')];
  if (one === other) return one.replace('\u0000', say(words, 'eye.both'));
  if (one.includes('\u00d7') || one.replace(FIGURE, '#') !== other.replace(FIGURE, '#')) return null;
  const ofOther = other.match(FIGURE) ?? [];
  let at = 0;
  let apart = 0;
  const told = one.replace(FIGURE, (figure) => {
    const second = ofOther[at++] ?? figure;
    if (figure === second) return figure;
    apart++;
    return say(words, 'eye.two', { right: figure, left: second });
  });
  return apart > 1 ? null : told.replace('\u0000', say(words, 'eye.each'));
}
