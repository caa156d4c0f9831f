import { addMonths } from '../catalogue/civilDate.ts';
import type { Rule } from './rule.ts';

/** How long this shop accepts a prescription; local law may be stricter. */
export const prescriptionValidity: Rule = {
  id: 'prescription-validity',
  asks: 'lens',
  clearedBy: 'person',
  check({ hasPrescription, issued, date, habits, use }) {
    if (!hasPrescription || use === 'none') return [];
    const months = habits.prescriptionMonths;
    if (issued === null) return [{ message: 'undated', level: 'note', eye: 'both', figures: { months } }];
    if (issued > date) return [{ message: 'future', level: 'stop', eye: 'both', figures: { issued, date } }];
    const until = addMonths(issued, months);
    return date > until
      ? [{ message: 'expired', level: 'stop', eye: 'both', figures: { issued, until, months } }]
      : [];
  },
};
