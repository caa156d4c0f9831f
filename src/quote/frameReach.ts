/** What a frame makes over a grid of powers, for the owner: where its best single vision pair ends. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Frame } from '../catalogue/frame.ts';
import type { Verdict } from './answer.ts';
import { frameJudge } from './frameList.ts';
import { USUAL_PD_MM, usualPrescription, usualTerms } from './usualRequest.ts';

/** Spheres and minus cylinders, D. */
export interface PowerGrid {
  readonly spheresD: readonly number[];
  readonly cylindersD: readonly number[];
}

/** Verdicts on distance lenses, a row for each cylinder and one for each sphere; null: no lenses for this frame. */
export function frameReach(
  offer: Offer,
  date: string,
  { spheresD, cylindersD }: PowerGrid,
  frame: Frame,
): readonly (readonly (Verdict | null)[])[] {
  const asked = { ...usualTerms(offer, date), wearer: null, fit: { pd: USUAL_PD_MM[frame.wearer] } };
  return cylindersD.map((cylinderD) =>
    spheresD.map((sphereD) => {
      const prescription = usualPrescription(date, sphereD, cylinderD);
      return frameJudge(offer, { ...asked, use: 'distance', prescription })(frame)?.verdict ?? null;
    }),
  );
}
