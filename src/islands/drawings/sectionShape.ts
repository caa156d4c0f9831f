/**
 * A section as path data: depth to the viewer's right (the front on the left), the thickest edge above. SVG places,
 * mm: x is the depth behind the front's vertex, y is minus the height on the meridian.
 */
import { arcPath, num } from '../../components/drawing/svgPath.ts';
import type { HoldView, LensSection, SectionEnd } from '../../quote/view/section.ts';

interface Place {
  readonly xMm: number;
  readonly yMm: number;
}

/** How far a rim reaches over and beyond the bevel's apex, mm: not declared, drawn in a usual form. */
const RIM = { overMm: 0.5, beyondMm: 2 };
/** Width and depth of a groove for a cord, mm (common practice). */
const GROOVE = { widthMm: 0.6, depthMm: 0.6 };

/** Front or back of a section at a height between two of its places, straight between them. */
function faceAt(section: LensSection, depth: readonly number[], s: number): number {
  const { sMm } = section;
  const first = sMm[0] as number;
  const step = ((sMm.at(-1) as number) - first) / (sMm.length - 1);
  const i = Math.min(sMm.length - 2, Math.max(0, Math.floor((s - first) / step)));
  const t = (s - (sMm[i] as number)) / step;
  return (depth[i] as number) * (1 - t) + (depth[i + 1] as number) * t;
}

const backOf = ({ frontMm, thicknessMm }: LensSection) =>
  frontMm.map((front, i) => front + (thicknessMm[i] as number));

/** How deep behind the front of the edge the apex or groove lies: under the middle of the rim, the front flush with it. */
export function apexDepth(hold: HoldView, edgeMm: number): number {
  if (hold.mounting === 'full' && hold.rimDepthMm > 0) return Math.min(edgeMm, hold.rimDepthMm) / 2;
  return hold.mounting === 'full' ? edgeMm / 3 : edgeMm / 2;
}

/** The plain body of a section between two heights, as a front arc and a back arc, lowest point first. */
function faces(section: LensSection, from: number, to: number): { front: Place[]; back: Place[] } {
  const backs = backOf(section);
  const heights = [from, ...section.sMm.filter((s) => s > from + 0.2 && s < to - 0.2), to];
  const on = (depth: readonly number[]) => heights.map((s) => ({ xMm: faceAt(section, depth, s), yMm: s }));
  return { front: on(section.frontMm), back: on(backs) };
}

/** The lens with its bevels or grooves, closed. */
export function lensPath(section: LensSection, hold: HoldView): string {
  const inset =
    hold.mounting === 'full' ? hold.bevelHeightMm : hold.mounting === 'grooved' ? -GROOVE.depthMm : 0;
  const { front, back } = faces(section, section.other.sMm + inset, section.thick.sMm - inset);
  const top = edgePath(section.thick, hold, 1);
  const bottom = [...edgePath(section.other, hold, -1)].reverse();
  return `${arcPath(front)}${line(top)}${arcPath([...back].reverse(), true)}${line(bottom)}Z`;
}

const line = (places: readonly Place[]) => places.map(({ xMm, yMm }) => `L${num(xMm)} ${num(-yMm)}`).join('');

/** The edge from its front to its back; `up` is 1 at the upper end, -1 at the lower. */
function edgePath(end: SectionEnd, hold: HoldView, up: 1 | -1): Place[] {
  if (hold.mounting === 'drilled') return [];
  const x = end.frontMm + apexDepth(hold, end.mm);
  const half = Math.min(hold.mounting === 'full' ? hold.bevelWidthMm : GROOVE.widthMm, end.mm) / 2;
  const foot = end.sMm - up * (hold.mounting === 'full' ? hold.bevelHeightMm : -GROOVE.depthMm);
  const apex = end.sMm;
  const corners =
    hold.mounting === 'full'
      ? [
          [x - half, foot],
          [x, apex],
          [x + half, foot],
        ]
      : [
          [x - half, foot],
          [x - half, apex],
          [x + half, apex],
          [x + half, foot],
        ];
  return corners.map(([xMm = 0, yMm = 0]) => ({ xMm, yMm }));
}

/** The rim round one end, or null where none is known. */
export function rimPath(end: SectionEnd, hold: HoldView, up: 1 | -1): string | null {
  if (hold.mounting !== 'full' || hold.rimDepthMm === 0) return null;
  const x = end.frontMm + apexDepth(hold, end.mm);
  const [front, back] = [x - hold.rimDepthMm / 2, x + hold.rimDepthMm / 2];
  const inner = end.sMm - up * RIM.overMm;
  const outer = end.sMm + up * RIM.beyondMm;
  const slope = (hold.bevelWidthMm / 2 / hold.bevelHeightMm) * RIM.overMm;
  const half = Math.min(slope, hold.rimDepthMm / 2);
  const corners = [
    [front, inner],
    [front, outer],
    [back, outer],
    [back, inner],
    [x + half, inner],
    [x, end.sMm],
    [x - half, inner],
  ];
  return `M${corners.map(([a = 0, b = 0]) => `${num(a)} ${num(-b)}`).join('L')}Z`;
}

/** Where a cord lies in its groove; null without one. */
export const cordAt = (end: SectionEnd, hold: HoldView): Place | null =>
  hold.mounting === 'grooved' ? { xMm: end.frontMm + apexDepth(hold, end.mm), yMm: end.sMm } : null;

/** A section compared with, its thickest edge laid flush in front with that of the present one. */
export function comparedPath(compared: LensSection, present: LensSection): string {
  const dx = present.thick.frontMm - compared.thick.frontMm;
  const { front, back } = faces(compared, compared.other.sMm, compared.thick.sMm);
  const shift = (places: readonly Place[]) => places.map(({ xMm, yMm }) => ({ xMm: xMm + dx, yMm }));
  return `${arcPath(shift(front))}${arcPath(shift([...back].reverse()), true)}Z`;
}

/** The field that holds both sections and their labels at one scale. */
export function sectionField(sections: readonly (LensSection & { readonly compared: LensSection | null })[]) {
  const deep = sections.flatMap((one) => {
    const dx = one.compared === null ? 0 : one.thick.frontMm - one.compared.thick.frontMm;
    const others = one.compared === null ? [] : backOf(one.compared).map((x) => x + dx);
    return [...backOf(one), ...others];
  });
  const high = Math.max(...sections.flatMap((one) => [one.thick.sMm, one.compared?.thick.sMm ?? 0]));
  const low = Math.min(...sections.flatMap((one) => [one.other.sMm, one.compared?.other.sMm ?? 0]));
  const right = Math.max(...deep) + 20;
  return { left: -13, top: -high - 16, width: right + 13, height: high - low + 43, low: -low };
}
