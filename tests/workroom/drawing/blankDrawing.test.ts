import { describe, expect, it, test } from 'vitest';
import { box } from '../../../src/optics/outline.ts';
import type { Eye } from '../../../src/optics/types.ts';
import { holesOf } from '../../../src/quote/lensJob.ts';
import { blankDrawing } from '../../../src/workroom/drawing/blankDrawing.ts';
import { workedLens } from '../../../src/workroom/workedLens.ts';
import { judgedOf, PAIRS, type PairName } from '../jobs.ts';

const words = { title: 'Lens', nasal: 'nasal', axis: 'Axis' };

function drawn(name: PairName, eye: Eye) {
  const judged = judgedOf(PAIRS[name]);
  const worked = workedLens(judged, eye);
  if (worked === null) throw new Error('This pair of the shop can be cut.');
  const parts = { segment: judged.situation.design.segment, holes: holesOf(judged.resolved.frame, eye) };
  const { markup } = blankDrawing(worked, parts, 1, words);
  return { worked, markup };
}

const numbers = (text: string | undefined) =>
  (text ?? '')
    .split(/[^\d.-]+/)
    .filter(Boolean)
    .map(Number);
const attribute = (markup: string, name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(markup)?.[1];
const path = (markup: string, name: string) => new RegExp(`class="${name}" d="([^"]*)"`).exec(markup)?.[1];

test.each(Object.keys(PAIRS) as PairName[])(
  '%s: a unit is a millimetre, and two drawings fit side by side',
  (name) => {
    for (const eye of ['right', 'left'] as const) {
      const { markup, worked } = drawn(name, eye);
      const [, , width = 0, height = 0] = numbers(attribute(markup, 'viewBox'));
      expect(attribute(markup, 'width')).toBe(`${width}mm`);
      expect(attribute(markup, 'height')).toBe(`${height}mm`);
      expect(width).toBeLessThanOrEqual(90);
      const flat = numbers(path(markup, 'outline'));
      const xs = flat.filter((_, i) => i % 2 === 0);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(box(worked.outline).aMm, 1);
    }
  },
);

describe('the drawing', () => {
  it('marks the axis by TABO degrees, counter-clockwise from the right of the viewer, through the reference point', () => {
    for (const eye of ['right', 'left'] as const) {
      const { markup, worked } = drawn('bifocal', eye);
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = numbers(path(markup, 'axis'));
      const turn = (Math.atan2(-(y2 - y1), x2 - x1) * 180) / Math.PI;
      expect(((turn % 180) + 180) % 180).toBeCloseTo(worked.ordered.power.axisDeg, 1);
      const { xMm, yMm } = worked.reference;
      const off = (x2 - x1) * (-yMm - y1) - (y2 - y1) * (xMm - x1);
      expect(off / Math.hypot(x2 - x1, y2 - y1)).toBeCloseTo(0, 1);
    }
  });

  it('has no axis for a sphere and no arrow without prism', () => {
    const { markup } = drawn('own', 'right');
    expect(markup).not.toContain('class="axis"');
    expect(markup).not.toContain('class="prism"');
    expect(drawn('progressive', 'left').markup).toContain('class="prism"');
  });

  it('shows every hole of a drilled lens, and the segment of a bifocal', () => {
    expect(drawn('drilled', 'left').markup.match(/class="hole"/g)).toHaveLength(2);
    expect(drawn('bifocal', 'left').markup).toContain('class="segment"');
  });

  it('mirrors for the other eye: nasal is to the right of the right lens, to the left of the left', () => {
    expect(drawn('single', 'right').markup).toContain('text-anchor="end">nasal');
    expect(drawn('single', 'left').markup).toContain('text-anchor="start">nasal');
  });
});
