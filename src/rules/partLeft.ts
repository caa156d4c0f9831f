import type { Outcome } from './finding.ts';

/** What the rim leaves of a part of the lens that a wearer needs. */
export interface PartLeft {
  /** 0 to 1. */
  readonly share: number;
  /** Share that should be left, 0 to 1. */
  readonly leastShare: number;
  readonly widthMm: number;
}

/** Says that too little is left: a stop where nothing is, with the message for it; null where enough is. */
export function tooLittleLeft(
  eye: Outcome['eye'],
  design: string,
  { share, leastShare, widthMm }: PartLeft,
  messages: { readonly some: string; readonly none: string },
): Outcome | null {
  const leftPercent = Math.round(share * 100);
  const leastPercent = leastShare * 100;
  if (leftPercent >= leastPercent) return null;
  return {
    message: leftPercent === 0 ? messages.none : messages.some,
    level: leftPercent === 0 ? 'stop' : 'caution',
    eye,
    figures: { design, leftPercent, leastPercent, widthMm: Math.round(widthMm * 10) / 10 },
  };
}
