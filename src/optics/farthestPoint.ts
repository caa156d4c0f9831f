import type { OutlinePoints } from './outline.ts';

/** Index of the point of an outline that lies farthest from a place, mm; the first of equally far ones. */
export function farthestPoint({ xMm, yMm }: OutlinePoints, fromXMm: number, fromYMm: number): number {
  let farthest = -1;
  let at = 0;
  for (let i = 0; i < xMm.length; i++) {
    const dx = (xMm[i] as number) - fromXMm;
    const dy = (yMm[i] as number) - fromYMm;
    const d2 = dx * dx + dy * dy;
    if (d2 > farthest) {
      farthest = d2;
      at = i;
    }
  }
  return at;
}
