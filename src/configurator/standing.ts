/** Where a worksheet stands: what is to be mended, what is still needed, or the verdict. */
import type { Answer, Finding } from '../quote/answer.ts';
import type { FieldFault } from './fieldFault.ts';

/** Rules that ask for an entry: an empty worksheet is no refusal. */
const ASKING = ['prescription-incomplete', 'measurement-missing'];

export interface Standing {
  readonly kind: 'mend' | 'needs' | 'makeable' | 'care' | 'refused';
  /** What the engine or a field still asks for. */
  readonly needs: readonly string[];
  /** Faults in what was typed. */
  readonly faults: readonly FieldFault[];
  /** What the rules say apart from what is still asked for: stops first. */
  readonly findings: readonly Finding[];
}

/** Whether a finding only asks for an entry. */
export const isAsking = ({ rule, level }: Finding): boolean => level === 'stop' && ASKING.includes(rule);

/** How the entries stand by their faults and the engine's answer. */
export function standingOf(faults: readonly FieldFault[], answer: Answer): Standing {
  const all = answer.pairs[0]?.findings ?? [];
  const findings = all.filter((finding) => !isAsking(finding));
  const wrong = faults.filter(({ missing }) => !missing);
  const needs = [
    ...faults.filter(({ missing }) => missing).map(({ message }) => message),
    ...all.filter(isAsking).map(({ message }) => message),
  ];
  return { kind: kindOf(wrong, needs, findings, answer), needs, faults: wrong, findings };
}

function kindOf(
  wrong: readonly FieldFault[],
  needs: readonly string[],
  findings: readonly Finding[],
  answer: Answer,
): Standing['kind'] {
  if (wrong.length > 0) return 'mend';
  if (findings.some(({ level }) => level === 'stop')) return 'refused';
  return needs.length > 0 ? 'needs' : answer.verdict;
}
