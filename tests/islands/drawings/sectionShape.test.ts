import { describe, expect, it } from 'vitest';
import {
  apexDepth,
  comparedPath,
  lensPath,
  rimPath,
  sectionField,
} from '../../../src/islands/drawings/sectionShape.ts';
import { sectionView } from '../../../src/quote/view/section.ts';
import { extent, pathPoints } from '../../components/drawing/pathPoints.ts';
import type { Change } from '../../fixtures/bench.ts';
import { expectNear } from '../../optics/near.ts';
import { situationOf } from '../../quote/view/situations.ts';

const prescription = {
  right: { sphere: -6 },
  left: { sphere: -6 },
  vertexDistance: 12,
  issued: '2026-06-01',
};

function section(change: Change = {}) {
  const view = sectionView(
    situationOf({ prescription, ...change }),
    situationOf({ prescription, lenses: { material: 'thin' } }),
  );
  if (view === null) throw new Error('The bench makes this lens.');
  return { ...view.right, hold: view.hold };
}

describe('a lens drawn in section', () => {
  it('reaches the outline with the tips of its bevels, and with its edge where it is drilled', () => {
    const bevelled = section();
    const { top, bottom } = extent(pathPoints(lensPath(bevelled, bevelled.hold)));
    expectNear(top, bevelled.thick.sMm, 0.01, 'mm');
    expectNear(bottom, bevelled.other.sMm, 0.01, 'mm');
    const drilled = section({ frame: 'drill', lenses: { material: 'tough' } });
    expectNear(extent(pathPoints(lensPath(drilled, drilled.hold))).top, drilled.thick.sMm, 0.01, 'mm');
  });

  it('has its cord groove down to the outline, and stands beyond it', () => {
    const grooved = section({ frame: 'groove' });
    const points = pathPoints(lensPath(grooved, grooved.hold));
    expect(extent(points).top).toBeGreaterThan(grooved.thick.sMm);
    expect(points.some(({ yMm }) => Math.abs(yMm - grooved.thick.sMm) < 0.01)).toBe(true);
  });
});

describe('the rim in section', () => {
  it('is as deep as it is, and leaves what is beyond it behind', () => {
    const { thick, hold, beyondRimMm } = section();
    const rim = extent(pathPoints(rimPath(thick, hold, 1) ?? ''));
    expectNear(rim.widthMm, hold.rimDepthMm, 0.011, 'mm');
    expectNear(rim.left, thick.frontMm, 0.011, 'mm');
    expectNear(thick.frontMm + thick.mm - rim.right, beyondRimMm, 0.02, 'mm');
  });

  it('holds a thin edge in its middle', () => {
    const { hold } = section();
    expect(apexDepth(hold, 1.2)).toBe(0.6);
  });
});

describe('the lens compared with', () => {
  it('begins at its thickest edge where the present one does', () => {
    const one = section();
    if (one.compared === null) throw new Error('One was given.');
    const tops = pathPoints(comparedPath(one.compared, one)).filter(
      ({ yMm }) => Math.abs(yMm - one.thick.sMm) < 0.01,
    );
    expectNear(extent(tops).left, one.thick.frontMm, 0.02, 'mm');
    expectNear(extent(tops).widthMm, one.compared.thick.mm, 0.02, 'mm');
  });

  it('lies in the field with the present one', () => {
    const one = section();
    if (one.compared === null) throw new Error('One was given.');
    const field = sectionField([one]);
    const { right, top } = extent(pathPoints(comparedPath(one.compared, one)));
    expect(right).toBeLessThan(field.left + field.width);
    expect(-top).toBeGreaterThan(field.top);
  });
});
