/**
 * Blank and outline of both lenses at true scale, front view, so that a blank can be laid on the sheet: blank and
 * its edging margin, box and datum, reference point, fitting cross, segment, axis and base of the prism.
 */

import type { Segment } from '../../catalogue/design.ts';
import { box } from '../../optics/outline.ts';
import { toMinusCylinder } from '../../optics/prescription.ts';
import { nasalSign, prismToPolar } from '../../optics/prismBase.ts';
import { segmentCorners } from '../../optics/segment.ts';
import type { PointMm } from '../../optics/types.ts';
import { axisText } from '../figures.ts';
import { html, type Markup } from '../markup.ts';
import type { WorkedLens } from '../workedLens.ts';
import { linePath, num, outlinePath, xy } from './path.ts';

/** What the drawing is labelled with; texts of the shop's words. */
export interface DrawingWords {
  readonly title: string;
  readonly nasal: string;
  readonly axis: string;
}

/** What is drawn besides the lens itself: a segment, holes from the boxed centre of this eye. */
export interface DrawnParts {
  readonly segment: Segment | null;
  readonly holes: readonly (PointMm & { readonly diameterMm: number })[];
}

/** Widest that one lens may be on the sheet, mm: two stand side by side within the width of A4. */
const MOST_WIDTH_MM = 90;
const MARGIN_MM = 2;
const AXIS_MARK_MM = 7;

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** One lens at true scale: its width and height are in mm. `marginMm` is kept free along the rim of the blank. */
export function blankDrawing(
  worked: WorkedLens,
  { segment, holes }: DrawnParts,
  marginMm: number,
  words: DrawingWords,
): Markup {
  const extent = extentOf(worked);
  const width = extent.right - extent.left;
  const height = extent.top - extent.bottom;
  const { middle, usedMm } = worked.lens.blank;
  const circle = (radius: number, name: string) =>
    html`<circle class="${name}" cx="${num(middle.xMm)}" cy="${num(-middle.yMm)}" r="${num(radius)}"/>`;
  return html`<svg class="blank-drawing" width="${num(width)}mm" height="${num(height)}mm" viewBox="${num(extent.left)} ${num(-extent.top)} ${num(width)} ${num(height)}" role="img" aria-label="${words.title}">
${circle(usedMm / 2, 'blank')}${circle(usedMm / 2 - marginMm, 'margin')}
${boxLines(worked)}
<path class="outline" d="${outlinePath(worked.outline)}"/>
${segment && segmentShape(worked, segment)}
${holes.map(({ xMm, yMm, diameterMm }) => html`<circle class="hole" cx="${num(xMm)}" cy="${num(-yMm)}" r="${num(diameterMm / 2)}"/>`)}
${axisMarks(worked, words)}
${prismArrow(worked)}
${marks(worked)}
${nasalMark(worked, words)}
</svg>`;
}

function extentOf({ outline, lens, eye }: WorkedLens): Extent {
  const { minX, maxX, minY, maxY } = box(outline);
  const { middle, usedMm } = lens.blank;
  const r = usedMm / 2;
  const whole = {
    left: Math.min(minX, middle.xMm - r) - MARGIN_MM,
    right: Math.max(maxX, middle.xMm + r) + MARGIN_MM,
    top: Math.max(maxY, middle.yMm + r) + MARGIN_MM,
    bottom: Math.min(minY, middle.yMm - r) - MARGIN_MM,
  };
  if (whole.right - whole.left <= MOST_WIDTH_MM) return whole;
  // A blank wider than half a page is cut off on its temporal side, where least is to be seen.
  return eye === 'right'
    ? { ...whole, left: whole.right - MOST_WIDTH_MM }
    : { ...whole, right: whole.left + MOST_WIDTH_MM };
}

function boxLines({ outline }: WorkedLens): Markup {
  const { minX, maxX, minY, maxY, aMm, bMm } = box(outline);
  const datum = linePath({ xMm: minX - 3, yMm: 0 }, { xMm: maxX + 3, yMm: 0 });
  const middle = linePath({ xMm: 0, yMm: minY }, { xMm: 0, yMm: maxY });
  return html`<rect class="box" x="${num(minX)}" y="${num(-maxY)}" width="${num(aMm)}" height="${num(bMm)}"/><path class="datum" d="${datum}${middle}"/>`;
}

function segmentShape({ segmentTop }: WorkedLens, segment: Segment): Markup | null {
  if (segmentTop === null) return null;
  const corners = segmentCorners(segment, segmentTop).map(([xMm, yMm]) => xy({ xMm, yMm }));
  return html`<path class="segment" d="M${corners.join('L')}Z"/>`;
}

/** Marks at both ends of the axis line, on the rim of the blank, and the line itself through the reference point. */
function axisMarks({ ordered, reference, lens }: WorkedLens, words: DrawingWords): Markup | null {
  const minus = toMinusCylinder(ordered.power);
  const axis = axisText(minus);
  if (axis === '') return null;
  const turn = (minus.axisDeg * Math.PI) / 180;
  const [dx, dy] = [Math.cos(turn), Math.sin(turn)];
  const { middle, usedMm } = lens.blank;
  // Where the line through the reference point meets the rim of the blank.
  const ox = reference.xMm - middle.xMm;
  const oy = reference.yMm - middle.yMm;
  const along = ox * dx + oy * dy;
  const half = Math.sqrt(Math.max(0, along * along - ox * ox - oy * oy + (usedMm / 2) ** 2));
  const at = (t: number): PointMm => ({ xMm: reference.xMm + t * dx, yMm: reference.yMm + t * dy });
  const [far, near] = [half - along, -half - along];
  const label = at(far - AXIS_MARK_MM - 3.5);
  return html`<path class="axis" d="${linePath(at(near), at(far))}"/><path class="axis-mark" d="${linePath(at(near), at(near + AXIS_MARK_MM))}${linePath(at(far), at(far - AXIS_MARK_MM))}"/><text class="label" x="${num(label.xMm)}" y="${num(-label.yMm - 1)}" text-anchor="middle">${words.axis} ${axis}</text>`;
}

/** An arrow from the reference point towards the base of all prism that is ground there, longer for more of it. */
function prismArrow({ ground, reference }: WorkedLens): Markup | null {
  const { amount, baseDeg } = prismToPolar(ground);
  if (amount < 0.05) return null;
  const length = Math.min(18, 4 + 4 * amount);
  const turn = (baseDeg * Math.PI) / 180;
  const at = (along: number, across: number): PointMm => ({
    xMm: reference.xMm + along * Math.cos(turn) - across * Math.sin(turn),
    yMm: reference.yMm + along * Math.sin(turn) + across * Math.cos(turn),
  });
  const head = `M${xy(at(length - 2, 1))}L${xy(at(length, 0))}L${xy(at(length - 2, -1))}`;
  return html`<path class="prism" d="${linePath(at(1.5, 0), at(length, 0))}${head}"/>`;
}

function marks({ reference, cross }: WorkedLens): Markup {
  const { xMm, yMm } = reference;
  const dot = html`<circle class="reference" cx="${num(xMm)}" cy="${num(-yMm)}" r="1.1"/><circle class="reference-middle" cx="${num(xMm)}" cy="${num(-yMm)}" r="0.3"/>`;
  if (cross === null) return dot;
  return html`${dot}<path class="cross" d="M${num(cross.xMm - 2.5)} ${num(-cross.yMm)}h5M${num(cross.xMm)} ${num(-cross.yMm - 2.5)}v5"/>`;
}

function nasalMark({ eye, outline }: WorkedLens, { nasal }: DrawingWords): Markup {
  const { minX, maxX } = box(outline);
  const right = nasalSign(eye) > 0;
  const x = right ? maxX - 1.5 : minX + 1.5;
  return html`<text class="label" x="${num(x)}" y="-1" text-anchor="${right ? 'end' : 'start'}">${nasal}</text>`;
}
