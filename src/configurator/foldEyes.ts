/** What holds of both eyes alike is told once. */
import type { Words } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Finding } from '../quote/answer.ts';

/** The findings with those of the right and the left eye that say the same folded into one of both, in their order. */
export function foldEyes(words: Words, findings: readonly Finding[]): readonly Finding[] {
  const told = (finding: Finding) => {
    const sentence = finding.message.replace(say(words, `eye.${finding.eye}`), say(words, 'eye.both'));
    return `${finding.rule} ${finding.level} ${sentence}`;
  };
  const ofEye = (eye: Finding['eye']) => new Set(findings.filter((one) => one.eye === eye).map(told));
  const right = ofEye('right');
  const left = ofEye('left');
  return findings.flatMap((finding) => {
    const alike = finding.eye !== 'both' && right.has(told(finding)) && left.has(told(finding));
    if (!alike) return [finding];
    if (finding.eye === 'left') return [];
    const message = finding.message.replace(say(words, 'eye.right'), say(words, 'eye.both'));
    return [{ ...finding, eye: 'both' as const, message }];
  });
}
