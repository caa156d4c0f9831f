/** Small drawings of the families of lens shapes, each in a box that suits it. Made when the shop is built. */
import { contourOf } from '../../components/drawing/contour.ts';
import { closedPath } from '../../components/drawing/svgPath.ts';
import { resolveOwnFrame } from '../../quote/ownFrame.ts';

const BOXES: Readonly<Record<string, { readonly a: number; readonly b: number }>> = {
  round: { a: 46, b: 46 },
  oval: { a: 52, b: 34 },
  panto: { a: 49, b: 43 },
  rectangle: { a: 54, b: 32 },
  square: { a: 50, b: 42 },
  upswept: { a: 54, b: 40 },
  teardrop: { a: 55, b: 47 },
  hexagon: { a: 52, b: 44 },
};

/** Path data by family, mm, y down, in the order of offer. */
export type FamilyPaths = Readonly<Record<string, string>>;

/** The path of each family. Throws where a family has no shape in its box. */
export function familyPaths(): FamilyPaths {
  return Object.fromEntries(
    Object.entries(BOXES).map(([family, size]) => {
      const shape = resolveOwnFrame({ ...size, dbl: 18, family, mounting: 'full' }, '', []);
      if (shape === null)
        throw new Error(`The family "${family}" has no shape of ${size.a} by ${size.b} mm.`);
      return [family, closedPath(contourOf(shape.radiiMm))];
    }),
  );
}
