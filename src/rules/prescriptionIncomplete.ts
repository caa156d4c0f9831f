import { eachEye, type Rule } from './rule.ts';

/** Powers that the use asks for must be there: a sphere an eye, and an add where there is a near part. */
export const prescriptionIncomplete: Rule = {
  id: 'prescription-incomplete',
  asks: 'lens',
  clearedBy: 'person',
  check(situation) {
    const { use } = situation;
    if (use === 'none') return [];
    if (!situation.hasPrescription)
      return [{ message: 'none', level: 'stop', eye: 'both', figures: { use } }];
    const eyes = [situation.right, situation.left];
    // A balance lens copies the other eye: two of them have nothing to copy.
    if (eyes.every(({ prescribed }) => prescribed.balance))
      return [{ message: 'two-balance', level: 'stop', eye: 'both', figures: { missing: 'sphere' } }];
    const spheres = eachEye(situation, ({ eye, prescribed }) =>
      prescribed.sphereD === null && !prescribed.balance
        ? { message: 'sphere', level: 'stop', eye, figures: { missing: 'sphere' } }
        : null,
    );
    if (spheres.length > 0 || use === 'distance') return spheres;
    const none = eyes.every(({ prescribed }) => !prescribed.addD);
    return none ? [{ message: 'add', level: 'stop', eye: 'both', figures: { use, missing: 'add' } }] : [];
  },
};
