/** A power typed without its point, such as 225 for 2.25: what may have been meant. Offered, never put in unasked. */
import { eyeFaults } from '../quote/plausible.ts';
import { writePower } from './write.ts';

const POWER = /^(?:right|left)\.(sphere|cylinder|add)$/;
const WHOLE = /^[+\-\u2212\u2013]?\s*\d{2,4}$/;

const isPower = (name: string, value: number) =>
  !eyeFaults({ sphere: 0, [name]: value }, '').some(({ path }) => path === `.${name}`);

/**
 * Texts that may have been meant by the whole number `text` in a field: none where it is a power as it stands or no
 * power even with its point; both signs where a sign is needed and missing.
 */
export function decimalSlip(field: string, text: string): readonly string[] {
  const name = POWER.exec(field)?.[1];
  if (name === undefined || !WHOLE.test(text)) return [];
  const size = Number(text.replace(/\D/g, ''));
  const sign = /^[-\u2212\u2013]/.test(text) ? -1 : 1;
  if (isPower(name, sign * size) || !isPower(name, (sign * size) / 100)) return [];
  if (name === 'add') return [(size / 100).toFixed(2)];
  return /^\d/.test(text) ? bothSigns(size / 100) : [writePower((sign * size) / 100)];
}

/** A power with each sign. */
export const bothSigns = (sizeD: number): readonly string[] => [writePower(-sizeD), writePower(sizeD)];
