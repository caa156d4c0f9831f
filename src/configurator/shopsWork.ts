/** Findings that the shop acts on by itself: the shopper learns of them, and has nothing to weigh or to do. */
import type { Finding } from '../quote/answer.ts';

/** By the ids of their rules. */
export const SHOPS_WORK: readonly string[] = [
  'as-worn',
  'frame-curve',
  'outline-estimate',
  'thickness-estimate',
];

/** Whether a finding is the shop's to see to; a stop never is. */
export const isShopsWork = ({ rule, level }: Pick<Finding, 'rule' | 'level'>): boolean =>
  level !== 'stop' && SHOPS_WORK.includes(rule);
