/**
 * Reads a prescription around words that it does not know. A word is left out only where an eye has come to its end,
 * and with the figures behind it, which it may name: none is read as something that it may not be.
 */
import type { NotationFault } from '../../optics/notation/fault.ts';
import { readPrescription } from '../../optics/notation/readPrescription.ts';
import { blanked } from './asides.ts';
import type { Span } from './contactLens.ts';

interface Around {
  readonly read: ReturnType<typeof readPrescription>;
  /** The words that were left out, with the figures that stood behind them. */
  readonly unknown: readonly Span[];
}

const EYE =
  /(?<![\p{L}.])(?:o\.?[dsgu]\.?|odg|r\.?e\.?|l\.?e\.?|r|l|right|left|be|both|droit|gauche|œil|oeil)(?![\p{L}\d])/giu;
/** An add with its name, whose amount is its own. */
const ADD = /(?<!\p{L})add(?:ition)?(?!\p{L})/iu;
const SIGNED = /[+\-\u2212\u2013]\s*[\d.,]/gu;
/** What makes a figure a prism of the eye, whatever word stands before it. */
const PRISM = /(?<!\p{L})b\p{L}{1,3}(?!\p{L})|(?<!\p{L})base(?!\p{L})|[Δ∆]|prism/iu;
const AXIS = /[x×*°]|(?<!\p{L})(?:ax|axis|axe|à)(?!\p{L})/iu;

/** What is read of a text, and what of it was left out. */
export function readAround(text: string): Around {
  const unknown: Span[] = [];
  for (let rest = text; ; ) {
    const read = readPrescription(rest);
    const span = read.ok ? null : leftOut(rest, read.fault);
    if (span === null) return { read, unknown };
    unknown.push(span);
    rest = blanked(rest, span);
  }
}

/** Whether a fault is a word that stands by itself where an eye has ended. */
export const isUnknownWord = ({ code, found }: NotationFault): boolean =>
  (code === 'left-over' || code === 'no-eye') && /^\p{L}/u.test(found) && !ADD.test(found);

/** The stretch to leave out; null where the fault is no such word, or where it may have changed what stands beside it. */
function leftOut(text: string, fault: NotationFault): Span | null {
  const { start, end } = fault;
  if (!isUnknownWord(fault) || /\d$/.test(text.slice(0, start)) || /^\d/.test(text.slice(end))) return null;
  const line = /^[^\r\n;]*/.exec(text.slice(end))?.[0] ?? '';
  const next = [line.search(EYE), line.search(ADD)].filter((at) => at >= 0);
  const behind = line.slice(0, Math.min(line.length, ...next));
  if (!/\d/.test(behind)) return { start, end };
  if (PRISM.test(behind)) return null;
  return isLoneSphere(text.slice(0, start)) ? null : { start, end: end + behind.trimEnd().length };
}

/** Whether the eye that a text ends with has no cylinder yet: the next figures may be it. */
function isLoneSphere(text: string): boolean {
  const name = [...text.matchAll(EYE)].at(-1);
  if (name === undefined) return false;
  const power = text.slice(name.index + name[0].length).split(ADD)[0] ?? '';
  return !AXIS.test(power) && (power.match(SIGNED)?.length ?? 0) < 2;
}
