/** Where a worksheet stands: what is to be mended, what is still needed, or the verdict. */
import type { Answer, Finding } from '../quote/answer.ts';
import type { FieldFault } from './fieldFault.ts';
import { FIELDS, type Field } from './fields.ts';
import { standTogether } from './withoutFaulty.ts';

/** Rules that ask for an entry: an empty worksheet is no refusal. */
const ASKING = ['prescription-incomplete', 'measurement-missing'];

/** An entry that is asked for, and where it goes; null where it has no field of its own. */
export interface Need {
  readonly field: Field | null;
  readonly message: string;
}

export interface Standing {
  readonly kind: 'mend' | 'needs' | 'makeable' | 'care' | 'refused';
  /** What the engine or a field still asks for. */
  readonly needs: readonly Need[];
  /** Faults in what was typed. */
  readonly faults: readonly FieldFault[];
  /** What the rules say apart from what is still asked for: stops first. */
  readonly findings: readonly Finding[];
}

/** Whether a finding only asks for an entry. */
export const isAsking = ({ rule, level }: Finding): boolean => level === 'stop' && ASKING.includes(rule);

/**
 * How the entries stand by their faults and the engine's answer. What `isTyped` for the first time is no fault yet: it
 * is still needed, as before its first sign.
 */
export function standingOf(
  faults: readonly FieldFault[],
  answer: Answer,
  isTyped: (field: Field) => boolean = () => false,
): Standing {
  const all = answer.pairs[0]?.findings ?? [];
  const findings = all.filter((finding) => !isAsking(finding));
  const isBegun = ({ field, missing }: FieldFault) => !missing && field !== null && isTyped(field);
  const begun = faults.filter(isBegun);
  const wrong = faults.filter((fault) => !fault.missing && !isBegun(fault));
  const asked = all
    .filter(isAsking)
    .map((finding) => ({ field: fieldAsked(finding), message: finding.message }))
    // Missing for the engine since a faulty entry beside it was left out: told where the fault is.
    .filter(
      (need) =>
        !faults.some(
          (fault) => isAbout(fault.field, need) && !(isBegun(fault) && fault.field === need.field),
        ),
    );
  const needs = [
    ...faults.filter(({ missing }) => missing),
    ...begun.filter(({ field }) => !asked.some((need) => need.field === field)),
    ...asked,
  ].map(({ field, message }) => ({ field, message }));
  return { kind: kindOf(wrong, needs, findings, answer), needs, faults: wrong, findings };
}

function kindOf(
  wrong: readonly FieldFault[],
  needs: readonly Need[],
  findings: readonly Finding[],
  answer: Answer,
): Standing['kind'] {
  if (wrong.length > 0) return 'mend';
  if (findings.some(({ level }) => level === 'stop')) return 'refused';
  return needs.length > 0 ? 'needs' : answer.verdict;
}

/** The field of an entry that a rule asks for. */
function fieldAsked({ eye, figures: { missing } }: Finding): Field | null {
  const of = eye === 'both' ? 'right' : eye;
  const names = [`${of}.${missing}`, `${missing}.${of}`];
  return FIELDS.find((field) => names.includes(field)) ?? null;
}

/** Whether a faulty entry is what is asked for, or means nothing without it. */
const isAbout = (faulty: Field | null, { field }: Need): boolean =>
  faulty !== null && field !== null && (faulty === field || standTogether(faulty, field));
