/** Two lists: packages that a rule lets pass, and packages that it speaks of, with level, eye, message and figures. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Offer } from '../../src/catalogue/catalogue.ts';
import { RULES } from '../../src/rules/rules.ts';
import { type Change, changed, findingsOf, frame, material, offer, words } from '../fixtures/bench.ts';

const rx = (right: object, left: object = right, rest: object = {}) =>
  ({ right, left, vertexDistance: 12, issued: '2026-06-01', ...rest }) as NonNullable<
    ReturnType<typeof changed>['prescription']
  >;
const withAdd = rx({ sphere: 1, add: 2 });
const heights = (mm: number) => ({ right: mm, left: mm });
const progressive = { use: 'all', design: 'long' } as const;
const bifocal = { use: 'all', design: 'flat-top' } as const;

/** Rule, package: nothing is said. */
const allowed: readonly [string, Change][] = [
  ['prescription-incomplete', {}],
  ['prescription-incomplete', { prescription: null, lenses: { use: 'none', design: 'none' } }],
  ['prescription-incomplete', { prescription: rx({ balance: true }, { sphere: -2 }) }],
  ['prescription-validity', {}],
  ['prescription-validity', { prescription: rx({ sphere: -2 }, undefined, { issued: '2024-11-25' }) }],
  ['measurement-missing', {}],
  [
    'measurement-missing',
    { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(25) } },
  ],
  ['measurement-outside-lens', { fit: { fittingHeight: heights(49) } }],
  ['use-not-served', { prescription: withAdd, lenses: { use: 'near' } }],
  ['not-offered', {}],
  ['declared-limit', {}],
  ['frame-combination', {}],
  ['mounting-material', { frame: 'drill', lenses: { material: 'tough' } }],
  ['impact-resistance', { wearer: 'child', lenses: { material: 'tough' } }],
  ['design-range', { prescription: rx({ sphere: -20 }) }],
  ['material-range', { prescription: rx({ sphere: -14 }) }],
  ['fitting-height', { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(18) } }],
  ['above-cross', { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(41) } }],
  ['segment-height', { prescription: withAdd, lenses: bifocal, fit: { segmentHeight: heights(14) } }],
  ['face-form', { frame: 'wrap' }],
  ['lens-refused', { prescription: rx({ sphere: -10 }) }],
  ['blank-too-small', { fit: { pd: { right: 29, left: 29 } } }],
  ['lens-too-thin', {}],
  ['height-assumed', { fit: { fittingHeight: heights(25) } }],
  ['edge-too-thick', { prescription: rx({ sphere: -9 }) }],
  ['adds-differ', { prescription: rx({ sphere: 1, add: 2 }, { sphere: 1 }) }],
  ['balance-lens', {}],
  // Behind a balance lens nothing is seen: what one eye does against the other is not felt.
  ...['fit-in-person', 'vertical-imbalance', 'base-curve-pair', 'monovision', 'pd-sensitivity'].map(
    (rule): [string, Change] => [
      rule,
      { prescription: rx({ sphere: -4.75, add: 2 }, { sphere: -2.75, balance: true }) },
    ],
  ),
  ...['fit-in-person', 'vertical-imbalance', 'pd-sensitivity'].map((rule): [string, Change] => [
    rule,
    { wearer: 'one-eyed', prescription: rx({ sphere: -4.75 }, { sphere: -1 }) },
  ]),
  ['fit-in-person', { prescription: rx({ sphere: -4.75 }, { sphere: -2 }) }],
  // Both up: the picture moves, and nothing parts the eyes (relative prism, from memory).
  ['fit-in-person', { prescription: rx({ sphere: -2, prism: [{ amount: 3, base: 'up' }] }) }],
  ['vertex-distance', { prescription: rx({ sphere: -5.75 }, undefined, { vertexDistance: null }) }],
  ['as-worn', {}],
  ['base-curve-pair', {}],
  ['frame-curve', {}],
  ['edge-beyond-rim', {}],
  ['edge-beyond-rim', { frame: 'groove' }],
  ['heavy-pair', {}],
  ['tint-driving', {}],
  ['tint-driving', { lenses: { tint: null } }],
  ['sharp-view', {}],
  ['sharp-view', { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(25) } }],
  ['colour-fringes', {}],
  ['uncoated-high-index', { lenses: { material: 'thin' } }],
  ['single-vision-with-add', { prescription: withAdd, lenses: { use: 'near' } }],
  ['not-for-driving', {}],
  ['stairs', {}],
  ['who-measured', {}],
  ['who-measured', { prescription: withAdd, lenses: progressive }],
  ['pd-halved', {}],
  ['outline-estimate', {}],
  ['thickness-estimate', {}],
  ['reading-zone-cut', { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(25) } }],
  ['segment-cut', { prescription: withAdd, lenses: bifocal, fit: { segmentHeight: heights(20) } }],
  ['vertical-imbalance', { prescription: rx({ sphere: -3 }, { sphere: -2 }) }],
  // Two alike lenses part the eyes nowhere: what is prescribed is what the eyes need, below the center as well.
  [
    'vertical-imbalance',
    {
      prescription: rx(
        { sphere: 1, add: 2, prism: [{ amount: 1, base: 'up' }] },
        { sphere: 1, add: 2, prism: [{ amount: 1, base: 'down' }] },
      ),
      lenses: progressive,
      fit: { fittingHeight: heights(25) },
    },
  ],
  ['pd-sensitivity', { prescription: rx({ sphere: -3.25 }) }],
  ['monovision', { prescription: rx({ sphere: 1, add: 2 }, { sphere: 1.5, add: 2 }) }],
  ['decentration', { fit: { pd: { right: 31.5, left: 31.5 } } }],
  ['polarised-screens', {}],
  ['photochromic-conditions', {}],
  ['mirror-coating', {}],
];

/** Rule, package, what is said: level eye message, and the figures that carry it. */
const refused: readonly [string, Change, string, object][] = [
  ['prescription-incomplete', { prescription: null }, 'stop both none', { use: 'distance' }],
  ['prescription-incomplete', { prescription: rx({}, { sphere: 1 }) }, 'stop right sphere', {}],
  ['prescription-incomplete', { lenses: { use: 'near' } }, 'stop both add', { use: 'near' }],
  [
    'prescription-incomplete',
    { prescription: rx({ balance: true }, { balance: true }) },
    'stop both two-balance',
    {},
  ],
  [
    'prescription-validity',
    { prescription: rx({ sphere: -2 }, undefined, { issued: '2024-11-24' }) },
    'stop both expired',
    { until: '2026-11-24', months: 24 },
  ],
  [
    'prescription-validity',
    { prescription: rx({ sphere: -2 }, undefined, { issued: '2026-11-26' }) },
    'stop both future',
    { date: '2026-11-25' },
  ],
  [
    'measurement-missing',
    { prescription: withAdd, lenses: progressive },
    'stop right fitting-height,stop left fitting-height',
    {},
  ],
  [
    'measurement-missing',
    { prescription: withAdd, lenses: bifocal },
    'stop right segment-height,stop left segment-height',
    {},
  ],
  [
    'measurement-outside-lens',
    { fit: { fittingHeight: { right: 50, left: 20 } } },
    'stop right height',
    { heightMm: 50, bMm: 50 },
  ],
  ['use-not-served', { lenses: { use: 'all' } }, 'stop both refused', { use: 'all' }],
  ['mounting-material', { frame: 'drill' }, 'stop both drilled', { material: 'Bench plastic' }],
  ['impact-resistance', { wearer: 'child' }, 'stop both child', { material: 'Bench plastic' }],
  ['impact-resistance', { wearer: 'one-eyed' }, 'stop both one-eyed', {}],
  [
    'design-range',
    { prescription: rx({ sphere: -2, cylinder: -6.25, axis: 90 }, { sphere: -2 }) },
    'stop right cylinder',
    { cylinderD: -6.25, mostD: -6 },
  ],
  [
    'design-range',
    {
      prescription: rx({ sphere: 1, add: 3.75 }, { sphere: 1, add: 3.5 }),
      lenses: progressive,
      fit: { fittingHeight: heights(25) },
    },
    'stop right add',
    { addD: 3.75, toD: 3.5 },
  ],
  [
    'design-range',
    {
      prescription: rx(
        {
          sphere: -2,
          prism: [
            { amount: 8, base: 'in' },
            { amount: 8, base: 'up' },
          ],
        },
        { sphere: -2 },
      ),
    },
    'stop right prism',
    { prism: 11.31, mostPrism: 10 },
  ],
  [
    'material-range',
    { prescription: rx({ sphere: -13, cylinder: -1.25, axis: 180 }, { sphere: -2 }) },
    'stop right power',
    { strongestD: -14.25, fromD: -14 },
  ],
  [
    'above-cross',
    { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(41.5) } },
    'stop right high,stop left high',
    { aboveMm: 8.5, leastMm: 9, shortMm: 0.5 },
  ],
  [
    'segment-height',
    { prescription: withAdd, lenses: bifocal, fit: { segmentHeight: { right: 13.5, left: 14 } } },
    'stop right low',
    { heightMm: 13.5, leastMm: 14, shortMm: 0.5 },
  ],
  [
    'face-form',
    { frame: 'wrap', prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(25) } },
    'stop both wrapped',
    { faceFormDeg: 15, mostDeg: 12 },
  ],
  [
    'adds-differ',
    {
      prescription: rx({ sphere: 1, add: 2 }, { sphere: 1 }),
      lenses: progressive,
      fit: { fittingHeight: heights(25) },
    },
    'caution right one-eye',
    { rightD: 2, leftD: 0 },
  ],
  [
    'adds-differ',
    { prescription: rx({ sphere: 1, add: 2 }, { sphere: 1, add: 2.25 }), lenses: { use: 'near' } },
    'caution both unequal',
    { rightD: 2, leftD: 2.25 },
  ],
  [
    'balance-lens',
    { prescription: rx({ balance: true }, { sphere: -2, cylinder: -0.75, axis: 90 }) },
    'caution right confirm',
    { sphereD: -2.25 },
  ],
  [
    'balance-lens',
    { prescription: rx({ sphere: 0, balance: true }, { sphere: -6 }) },
    'caution right left-out',
    { sphereD: -6 },
  ],
  [
    'vertex-distance',
    { prescription: rx({ balance: true }, { sphere: -6 }, { vertexDistance: null }) },
    'caution left unknown',
    { strongestD: -6 },
  ],
  [
    'height-assumed',
    { prescription: rx({ balance: true }, { sphere: -6 }) },
    'caution left datum',
    { perMmPrism: 0.6 },
  ],
  [
    'fit-in-person',
    { prescription: rx({ sphere: -5 }, { sphere: -2 }) },
    'caution both eyes-differ',
    { differenceAbsD: 3 },
  ],
  [
    'fit-in-person',
    { prescription: rx({ sphere: -2, prism: [{ amount: 4, base: 'out' }] }, { sphere: -2 }) },
    'caution right prism',
    { prism: 4 },
  ],
  // Bases in before both eyes add up, bases up and down do too (relative prism, from memory).
  [
    'fit-in-person',
    { prescription: rx({ sphere: -2, prism: [{ amount: 3, base: 'in' }] }) },
    'caution both prism-between',
    { prism: 6, horizontalPrism: 6, verticalPrism: 0, fromPrism: 4 },
  ],
  [
    'fit-in-person',
    {
      prescription: rx(
        { sphere: -2, prism: [{ amount: 2, base: 'up' }] },
        { sphere: -2, prism: [{ amount: 2, base: 'down' }] },
      ),
    },
    'caution both prism-between',
    { prism: 4, horizontalPrism: 0, verticalPrism: 4 },
  ],
  [
    'vertex-distance',
    { prescription: rx({ sphere: -6 }, { sphere: -5 }, { vertexDistance: null }) },
    'caution right unknown',
    { strongestD: -6, fromAbsD: 6 },
  ],
  [
    'as-worn',
    { frame: 'wrap', prescription: rx({ sphere: -6 }, { sphere: 0 }) },
    'note right power-and-prism,note left power-and-prism',
    { faceFormDeg: 15, cause: 'tilt' },
  ],
  // 12 mm to 15 mm: -8 / (1 - 0.003 x 8) = -8.20 by hand.
  [
    'as-worn',
    { prescription: rx({ sphere: -8 }), fit: { vertexDistance: 15 } },
    'note right power,note left power',
    { order: '-8.20 DS', cause: 'distance', testedMm: 12, wornMm: 15 },
  ],
  [
    'base-curve-pair',
    {
      frame: { a: 50, b: 50, dbl: 20, family: 'round', mounting: 'full' },
      prescription: rx({ sphere: 3 }, { sphere: -8 }),
    },
    'caution both differ',
    { rightD: 8, leftD: 4, differenceAbsD: 4, mostAbsD: 2 },
  ],
  [
    'edge-beyond-rim',
    { frame: 'groove', prescription: rx({ sphere: -4 }) },
    'note right open,note left open',
    { rimMm: 0 },
  ],
  [
    'edge-beyond-rim',
    {
      frame: { a: 50, b: 50, dbl: 20, family: 'round', mounting: 'full' },
      prescription: rx({ sphere: -5 }),
    },
    'note right unknown-rim,note left unknown-rim',
    {},
  ],
  [
    'height-assumed',
    { prescription: rx({ sphere: -6 }, { sphere: -2 }) },
    'caution right datum,caution left datum',
    { aboveMm: 0, perMmPrism: 0.6 },
  ],
  [
    'height-assumed',
    { prescription: rx({ sphere: -2 }, { sphere: 0 }) },
    'note right datum',
    { aboveMm: 0, perMmPrism: 0.2 },
  ],
  ['tint-driving', { lenses: { tint: 'glacier' } }, 'caution both never', { category: 4 }],
  ['tint-driving', { lenses: { tint: 'dusk' } }, 'note both not-at-night', { category: 1 }],
  ['tint-driving', { lenses: { tint: 'noon' } }, 'note both not-at-night', { category: 3 }],
  [
    'sharp-view',
    { prescription: rx({ sphere: 6 }), lenses: { material: 'thin' } },
    'note both surfaced',
    { angleDeg: 14.2 },
  ],
  // ANSI Z80.1-2015: over 2.75 D across, the reference points of a pair may be out by 2.5 mm.
  [
    'pd-sensitivity',
    { prescription: rx({ sphere: -9.5 }, { sphere: -2 }) },
    'note right pair',
    { perMmPrism: 0.95, toleranceMm: 2.5 },
  ],
  [
    'pd-sensitivity',
    {
      prescription: rx({ sphere: 4, add: 2 }),
      lenses: progressive,
      fit: { fittingHeight: heights(25) },
    },
    'note right each,note left each',
    { perMmPrism: 0.4, toleranceMm: 1 },
  ],
  [
    'vertical-imbalance',
    { prescription: rx({ sphere: -4 }, { sphere: -2 }) },
    'note both single-vision',
    { prism: 2 },
  ],
  [
    'colour-fringes',
    { prescription: rx({ sphere: -7 }, { sphere: -2 }), lenses: { material: 'thin' } },
    'note right seen',
    // 7 D x 1.5588 cm / 32 (Prentice over the Abbe number).
    { fringesPrism: 0.34, abbe: 32 },
  ],
  [
    'uncoated-high-index',
    { lenses: { material: 'thin', coating: null } },
    'note both reflects',
    // ((1.66 - 1) / (1.66 + 1))² = 6.16 %.
    { reflectancePercent: 6.16 },
  ],
  ['single-vision-with-add', { prescription: withAdd }, 'note both distance-only', { addD: 2 }],
  ['not-for-driving', { prescription: withAdd, lenses: { use: 'near' } }, 'note both near-lens', {}],
  [
    'stairs',
    { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(25) } },
    'note both progressive',
    {},
  ],
  ['who-measured', { wearer: 'child', lenses: { material: 'tough' } }, 'note both child', {}],
  [
    'who-measured',
    { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(25) } },
    'note both height',
    {},
  ],
  [
    'who-measured',
    { prescription: withAdd, lenses: bifocal, fit: { segmentHeight: heights(20) } },
    'note both height',
    {},
  ],
  ['pd-halved', { fit: { pd: 70 } }, 'note both halved', { halfMm: 35 }],
  [
    'pd-halved',
    { prescription: withAdd, lenses: progressive, fit: { pd: 70, fittingHeight: heights(25) } },
    'caution both progressive',
    { halfMm: 35 },
  ],
  [
    'thickness-estimate',
    { prescription: withAdd, lenses: progressive, fit: { fittingHeight: heights(25) } },
    'note both profile',
    {},
  ],
  [
    'blank-too-small',
    { fit: { pd: { right: 23.4, left: 35 } } },
    'stop right surfaced',
    { neededMm: 75.2, shortMm: 0.1 },
  ],
];

const withMaterial = (change: Partial<typeof material>): Offer => ({
  ...offer,
  materials: offer.materials.map((one) => (one.id === material.id ? { ...one, ...change } : one)),
});
const withFrame = (change: Partial<typeof frame>): Offer => ({
  ...offer,
  frames: [{ ...frame, ...change }],
});
const withTint = (change: Partial<Offer['tints'][number]>): Offer => ({
  ...offer,
  tints: offer.tints.map((one) => (one.id === 'clear' ? { ...one, ...change } : one)),
});
const withHabits = (change: Partial<Offer['shop']['habits']>): Offer => ({
  ...offer,
  shop: { ...offer.shop, habits: { ...offer.shop.habits, ...change } },
});
const stock = {
  id: 'ready',
  diameterMm: 65,
  sphereD: { from: -4, to: 4 },
  cylinderD: 2,
  stepD: 0.25,
  forms: [{ toD: 4, baseCurveD: 4, centreThicknessMm: 1.8 }],
  coatings: ['quiet'],
  tints: ['clear'],
  priceMinor: 1000,
};

/** Rule, shop, package, what is said. */
const inOtherShops: readonly [string, Offer, Change, string, object][] = [
  [
    'not-offered',
    { ...offer, designs: offer.designs.map((one) => ({ ...one, materials: ['tough'] })) },
    {},
    'stop both together',
    { one: 'Single vision', other: 'Bench plastic' },
  ],
  [
    'declared-limit',
    withMaterial({
      limits: [
        {
          kind: 'not-with',
          ids: { coating: ['quiet'], mounting: ['full'] },
          level: 'caution',
          because: 'It peels.',
        },
      ],
    }),
    {},
    'caution both declared',
    { because: 'It peels.' },
  ],
  [
    'declared-limit',
    withMaterial({
      limits: [{ kind: 'only-with', ids: { tint: ['dusk'] }, level: 'stop', because: 'So it is.' }],
    }),
    {},
    'stop both declared',
    { because: 'So it is.' },
  ],
  [
    'frame-combination',
    withFrame({ notOffered: [{ size: '50-20', colourway: 'ink', because: 'Too thin.' }] }),
    {},
    'stop both not-made',
    { because: 'Too thin.' },
  ],
  [
    'lens-refused',
    withMaterial({ surfaced: null, stock: [stock] }),
    { prescription: rx({ sphere: -4.25 }, { sphere: -4 }) },
    'stop right not-in-stock',
    { sphereD: -4.25, fromD: -4, toD: 4 },
  ],
  [
    'lens-refused',
    withMaterial({ surfaced: null, stock: [stock] }),
    // A ready-made +4.00, 1.8 mm at its centre, has no edge left 25 mm out: 25²·4/(2000·0.498) = 2.5 mm of sag.
    { prescription: rx({ sphere: 4 }, { sphere: -2 }) },
    'stop right surfaces-cross',
    {},
  ],
  [
    'lens-too-thin',
    withMaterial({ surfaced: null, stock: [stock] }),
    // The same at +2.00 has about 1.8 - 25²·2/(2000·0.498) = 0.55 mm of edge where 1.0 is the least.
    { prescription: rx({ sphere: 2 }, { sphere: -2 }) },
    'stop right edge',
    {},
  ],
  [
    'frame-curve',
    withFrame({ frameCurveD: 8 }),
    // True power 4 at n 1.498 reads 4 · 0.530/0.498 = 4.26 at the tool index 1.530: 3.74 flatter than the rim.
    { lenses: { blank: 'stock' } },
    'caution right flatter,caution left flatter',
    { lensD: 4.26, frameD: 8, differenceAbsD: 3.74 },
  ],
  [
    'edge-too-thick',
    withHabits({ mostEdgeMm: 2 }),
    {},
    'stop right refused,stop left refused',
    { mostMm: 2 },
  ],
  ['heavy-pair', withHabits({ heavyFromG: 5 }), {}, 'caution both heavy', { fromG: 5 }],
  [
    'polarised-screens',
    withTint({ polarised: true, kind: 'polarised' }),
    {},
    'note both screens',
    { tint: 'Clear' },
  ],
  [
    'photochromic-conditions',
    withTint({ kind: 'photochromic' }),
    {},
    'note both windshield-and-heat',
    { tint: 'Clear' },
  ],
  [
    'mirror-coating',
    withTint({ mirrored: true }),
    {},
    'stop both front-face',
    { coating: 'Anti-reflective' },
  ],
  [
    'outline-estimate',
    withFrame({
      sizes: frame.sizes.map((size) => ({
        ...size,
        outline: { ...size.outline, origin: 'fitted', family: 'round' },
      })),
    }),
    { prescription: rx({ sphere: -6 }) },
    'caution both strong',
    { strongestAbsD: 6 },
  ],
];

describe.each(RULES.map(({ id }) => id))('%s', (id) => {
  const silent = allowed.filter(([rule]) => rule === id);
  const spoken = refused.filter(([rule]) => rule === id);
  it.each(silent)('lets a package pass: %s %j', (_, change) => {
    expect(findingsOf(id, change)).toEqual([]);
  });
  it.runIf(spoken.length > 0).each(spoken)('speaks of a package: %s %j', (_, change, said, figures) => {
    const found = findingsOf(id, change);
    const keys = Object.keys(words).filter((key) => key.startsWith(`rule.${id}.`));
    expect(found.map(({ level, eye }) => `${level} ${eye}`)).toEqual(
      said.split(',').map((one) => one.split(' ').slice(0, 2).join(' ')),
    );
    for (const one of said.split(',')) expect(keys).toContain(`rule.${id}.${one.split(' ')[2]}`);
    expect(found[0]?.figures).toMatchObject(figures);
    for (const { message } of found) expect(message).not.toMatch(/[{}]/);
  });
});

describe('a rule in another shop', () => {
  it.each(inOtherShops)('speaks of a package: %s', (id, shop, change, said, figures) => {
    const stocked =
      id === 'frame-curve'
        ? { ...shop, materials: withMaterial({ surfaced: null, stock: [stock] }).materials }
        : shop;
    const found = findingsOf(id, change, stocked);
    expect(found.map(({ level, eye }) => `${level} ${eye}`)).toEqual(
      said.split(',').map((one) => one.split(' ').slice(0, 2).join(' ')),
    );
    expect(found[0]?.figures).toMatchObject(figures);
    for (const { message } of found) expect(message).not.toMatch(/[{}]/);
  });
});

describe('the rules together', () => {
  it('have ids of their own, each with a title and a reason in the words', () => {
    const ids = RULES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) {
      expect(words[`rule.${id}.title`], id).toBeTruthy();
      expect(words[`rule.${id}.why`], id).toBeTruthy();
    }
  });

  it('have no sentence in the words that no rule is there for', () => {
    const ids = RULES.map(({ id }) => id);
    const named = Object.keys(words)
      .filter((key) => key.startsWith('rule.'))
      .map((key) => key.split('.')[1]);
    expect(named.filter((id) => !ids.includes(id ?? ''))).toEqual([]);
  });

  it('have a sentence for every message that their sources name', () => {
    const folder = new URL('../../src/rules/', import.meta.url);
    const missing = readdirSync(folder).flatMap((file) => {
      const text = readFileSync(new URL(file, folder), 'utf8');
      const id = /\n {2}id: '([^']+)'/.exec(text)?.[1];
      const messages = [...text.matchAll(/(?:message: |some: |none: |say\()'([^']+)'/g)].map(
        ([, message]) => message,
      );
      return id === undefined
        ? []
        : messages.filter((one) => !words[`rule.${id}.${one}`]).map((one) => `${id}: ${one}`);
    });
    expect(missing).toEqual([]);
  });

  it('each have a package that they let pass', () => {
    const missing = RULES.filter(({ id }) => !allowed.some(([rule]) => rule === id));
    expect(missing.map(({ id }) => id)).toEqual([]);
    expect(offer.frames.length).toBeGreaterThan(0);
    expect(changed({}).size).toBe('50-20');
  });
});
