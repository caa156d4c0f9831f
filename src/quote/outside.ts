/** A number held against its limits and steps, and the fault where it cannot be meant. */
import type { Fault, FaultNoun, FaultTold, FaultUnit } from './fault.ts';

/** Inclusive limits of an entry, with its unit. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly unit: FaultUnit;
}

const UNITS: Readonly<Record<FaultUnit, string>> = {
  diopters: 'D',
  prism: 'prism dioptres',
  mm: 'mm',
  degrees: 'degrees',
};

/** The distance between the pupils, and from the middle to one: each may be taken for the other. */
export const BOTH_PD: Span = { from: 40, to: 85, unit: 'mm' };
export const ONE_PD: Span = { from: 20, to: 43, unit: 'mm' };
const EIGHTH = 0.125;

/** What a number is called, here and in the words of a page. */
export interface Noun {
  readonly code: FaultNoun;
  readonly text: string;
}

/** A noun by its code in the words of a page and its text in the command's answer. */
export const noun = (code: FaultNoun, text: string): Noun => ({ code, text });

/** A number within its span, or the fault. */
export function outside(path: string, { code: of, text }: Noun, value: number, span: Span): Fault[] {
  const { from, to, unit } = span;
  if (value >= from && value <= to) return [];
  const hint = hintOf(value, span);
  return [
    {
      path,
      message: `${text} is out of range.`,
      expected: `${from} to ${to} ${UNITS[unit]}${hint?.text ?? ''}`,
      found: String(value),
      told: { code: 'range', of, unit, slots: { from, to }, ...(hint && { hint: hint.told }) },
    },
  ];
}

interface Hint {
  readonly text: string;
  readonly told: NonNullable<FaultTold['hint']>;
}

/** A slip of the decimal point is the commonest, 6.2 for 62; then both eyes' PD where one eye's is asked. */
function hintOf(value: number, span: Span): Hint | null {
  if (span === ONE_PD && value >= BOTH_PD.from && value <= BOTH_PD.to) {
    const half = value / 2;
    return {
      text: ` (${value} is for both eyes together; half of it is ${half})`,
      told: { code: 'both-eyes', slots: { value, half } },
    };
  }
  const ten = [value * 10, value / 10].find((other) => other >= span.from && other <= span.to);
  if (ten === undefined || span.unit !== 'mm') return null;
  const meant = Number(ten.toFixed(2));
  return { text: ` (did you mean ${meant}?)`, told: { code: 'point', slots: { meant } } };
}

/** A power that is no multiple of an eighth of a dioptre. */
export function stepFault(path: string, { code: of, text }: Noun, value: number): Fault[] {
  if (Number.isInteger(value / EIGHTH)) return [];
  const near = (Math.round(value * 4) / 4).toFixed(2);
  return [
    {
      path,
      message: `${text} is written in quarter or eighth steps.`,
      expected: `a multiple of 0.25 or 0.125 D, such as ${near}`,
      found: String(value),
      told: { code: 'step', of, slots: { near } },
    },
  ];
}
