import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyPackage } from '../../quote/view/situations.ts';
import { drawn } from './drawn.ts';
import { textOf } from './markup.ts';

const minus = {
  right: { sphere: -9.5 },
  left: { sphere: -8, cylinder: -1, axis: 20 },
  vertexDistance: 12,
  issued: '2026-06-01',
};

describe('the drawings of a package', () => {
  it('put no hole, no inline style and no id twice on the page, and refer to none that is not there', () => {
    fc.assert(
      fc.property(anyPackage, anyPackage, (change, other) => {
        const html = drawn(change, other);
        expect(html).not.toMatch(/NaN|Infinity|undefined|\[object| style=| class="dw-label/);
        const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
        expect(new Set(ids).size).toBe(ids.length);
        const references = [...html.matchAll(/(?:aria-labelledby="|url\(#)([^")]+)/g)].flatMap(
          ([, all = '']) => all.split(' '),
        );
        for (const id of references) expect(ids).toContain(id);
      }),
      { numRuns: 40 },
    );
  });

  it('name every picture', () => {
    for (const [, attributes = ''] of drawn({ prescription: minus }).matchAll(/<svg([^>]*)>/g))
      expect(attributes).toMatch(/role="img" aria-label(ledby)?="[^"]+"|aria-hidden="true"/);
  });

  it('say in words what they show', () => {
    const change = {
      prescription: minus,
      frame: 'ring',
      size: '60-10',
      fit: { pd: { right: 27, left: 31 }, fittingHeight: { right: 32, left: 32 } },
    };
    expect(textOf(drawn(change, { ...change, lenses: { material: 'thin' } }))).toMatchSnapshot();
  });

  it('say what of a bifocal and its prism is drawn', () => {
    const eye = { sphere: 2, add: 2, prism: [{ amount: 1.5, base: 'up' as const }] };
    const html = drawn({
      prescription: { right: eye, left: eye, issued: '2026-06-01' },
      fit: { segmentHeight: { right: 18, left: 18 } },
      lenses: { use: 'all', design: 'flat-top' },
    });
    const [pair = ''] = html.split('</figure>');
    expect(textOf(pair)).toMatchInlineSnapshot(`
      "The pair from the front. As the workroom lays it out, seen by someone who faces you, so your right eye is on the left. In millimeters, to scale.
      The pair from the front.
      Ø 651.50 Δ18.0Ø 651.50 Δ18.035.035.020 mmRightLeft
      Lens, to its edge
      Box and its center
      Optical center
      Reading segment
      Prism, arrow toward the base
      Blank the lens is cut from
      Its part clear of the edging margin
      Figures of the drawing of the pair
      | Right | Left | 
      PD, bridge to pupil | 35.0 mm | 35.0 mm | 
      Segment height | 18.0 mm | 18.0 mm | 
      Optical center, from box center | 2.00 mm down | 2.00 mm down | 
      Segment left | 97 % of 28 mm | 97 % of 28 mm | 
      Prism, base | 1.50 Δ up | 1.50 Δ up | 
      Blank | made to order, 65 mm; needs 62.77 mm | made to order, 65 mm; needs 62.77 mm | 
      Blank at its closest | 1.12 mm to spare, nose side | 1.12 mm to spare, nose side | 
      The height of a pupil was not measured, so only the line of its PD is drawn."
    `);
  });

  it('say what they wait for while nothing is known', () => {
    const html = drawn({ prescription: { right: {}, left: {} }, fit: {} });
    expect(textOf(html)).toMatchInlineSnapshot(`
      "The pair from the front. As the workroom lays it out, seen by someone who faces you, so your right eye is on the left. In millimeters, to scale.
      The pair from the front.
      35.035.020 mmRightLeft
      Lens, to its edge
      Box and its center
      Optical center
      Figures of the drawing of the pair
      | Right | Left | 
      PD, bridge to pupil | 35.0 mm | 35.0 mm | 
      Optical center, from box center | 0.00 mm | 0.00 mm | 
      Blanks are drawn once a lens can be computed.
      The height of a pupil was not measured, so only the line of its PD is drawn.
      The drawings of the cut lens appear once prescription and measurements give one.
      How far the view stays sharp. It is computed once prescription and measurements give a lens.
      What you see through it. The lens before a street and a page of print, in each state that its maker declares.
      You can read this page through thelens as it would look in thisstate, small print and all. Youcan read this page through thelens as it would look in thisstate, small print and all. Youcan read this page through the
      clear; lets 98.0 % of the light through; category 0
      Colors are the shop's samples of each state; your screen and your eye's adaptation change how dark they look.
      What others see in it. A white window mirrored in each face of the lens before a dark room, as bright as it would be there.
      frontback
      Without a coating: the front face reflects 3.97 %, the back face 3.66 % as seen through the lens.
      frontback
      With Anti-reflective: the front face reflects 1.00 %, the back face 0.98 % as seen through the lens."
    `);
  });
});
