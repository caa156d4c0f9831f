/** Marks of a drawing as path data: arrows, crosses, arcs. SVG places, mm, y down. */
import { num } from '../../components/drawing/svgPath.ts';

const HEAD_MM = 2.2;

/** A filled arrow head whose tip is at (x, y) and which points towards (dx, dy), a vector of length 1. */
export function head(x: number, y: number, dx: number, dy: number, lengthMm = HEAD_MM): string {
  const [bx, by] = [x - dx * lengthMm, y - dy * lengthMm];
  const half = lengthMm * 0.32;
  const one = `${num(bx - dy * half)} ${num(by + dx * half)}`;
  const two = `${num(bx + dy * half)} ${num(by - dx * half)}`;
  return `M${num(x)} ${num(y)}L${one}L${two}Z`;
}

/** An upright cross of half width `half`. */
export const cross = (x: number, y: number, half: number): string =>
  `M${num(x - half)} ${num(y)}h${num(2 * half)}M${num(x)} ${num(y - half)}v${num(2 * half)}`;

/** A full circle as path data. */
export const circlePath = (x: number, y: number, r: number): string =>
  `M${num(x - r)} ${num(y)}a${num(r)} ${num(r)} 0 1 0 ${num(2 * r)} 0a${num(r)} ${num(r)} 0 1 0 ${num(-2 * r)} 0Z`;

/** A horizontal dimension: its line and both heads; where the heads have no room they point in from outside. */
export function dimension(from: number, to: number, y: number): { line: string; heads: string } {
  const [a, b] = from < to ? [from, to] : [to, from];
  const roomy = b - a > 3 * HEAD_MM;
  const out = roomy ? 0 : HEAD_MM + 1.4;
  return {
    line: `M${num(a - out)} ${num(y)}H${num(b + out)}`,
    heads: roomy ? head(a, y, -1, 0) + head(b, y, 1, 0) : head(a, y, 1, 0) + head(b, y, -1, 0),
  };
}

/** Flat points `x, y, x, y` (y up) as points. */
export function unflat(flat: readonly number[]): { readonly xMm: number; readonly yMm: number }[] {
  return Array.from({ length: flat.length / 2 }, (_, i) => ({
    xMm: flat[2 * i] as number,
    yMm: flat[2 * i + 1] as number,
  }));
}
