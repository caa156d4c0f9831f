/** Whole prescriptions in frames of the shop that are hard in one way each: what is typed, and what has to be told. */
import type { Entries } from '../../src/configurator/fields.ts';
import type { ReportedChoice } from '../../src/quote/options.ts';

export interface Journey {
  readonly name: string;
  readonly frame: string;
  readonly entries: Entries;
  /** Sentences of the ticket, or parts of them. */
  readonly says: readonly string[];
  /** What the lists say of options: kind, id, and a part of it. */
  readonly options?: readonly (readonly [kind: ReportedChoice, id: string, says: string])[];
  /** Of the first advice that can be taken here: the kinds of its changes; null where none leads to this frame. */
  readonly taken: readonly string[] | null;
}

const MEASURED: Entries = { 'pd.right': '31', 'pd.left': '31', issued: '2026-06-01', vertexTested: '12' };
const both = (field: string, text: string): Entries => ({
  [`right.${field}`]: text,
  [`left.${field}`]: text,
});
const heights = (mm: string): Entries => ({ 'fittingHeight.right': mm, 'fittingHeight.left': mm });

export const LARGE: Journey = {
  name: '-9.50 in a large round frame',
  frame: 'curlew',
  entries: { ...MEASURED, ...both('sphere', '-9.50'), size: '53-20', material: 'standard-plastic' },
  says: [
    'Both eyes: the edge would be 14.44 mm at its thickest (temple side). We glaze up to 12 mm.',
    'Size 46-22 of this frame would do. Thickest edge 9.73 mm instead of 14.44 mm.',
    'Thinnest Episulfide 1.74, Anti-reflective',
    '8.85 mm instead of 14.44 mm',
  ],
  taken: ['size'],
};

export const JOURNEYS: readonly Journey[] = [
  LARGE,
  {
    name: '+6.00 from the shelf, against lenses made to order',
    frame: 'sanderling',
    entries: { ...MEASURED, ...both('sphere', '+6.00'), blank: 'stock' },
    says: ['Lenses made to order would do. Thickest edge 3.44 mm instead of 5.72 mm.'],
    options: [['blank', 'surfaced', '40 % thinner at the edge']],
    taken: ['blank'],
  },
  {
    name: 'eyes that differ by 4 D in a progressive',
    frame: 'whimbrel',
    entries: {
      ...MEASURED,
      'right.sphere': '-1.00',
      'left.sphere': '-5.00',
      ...both('add', '2.00'),
      ...heights('24'),
      use: 'all',
    },
    says: [
      'The mean powers of your eyes differ by 4.00 D',
      'your eyes meet 2.8 prism diopters of vertical difference (from 1.5 a correction is considered)',
    ],
    taken: ['material', 'coating'],
  },
  {
    name: '3 prism dioptres base in, each eye',
    frame: 'sanderling',
    entries: {
      ...MEASURED,
      ...both('sphere', '-2.00'),
      ...both('prism1.amount', '3'),
      ...both('prism1.base', 'in'),
    },
    says: [
      'Prism prescribed 3.00 \u0394 base in 3.00 \u0394 base in',
      'Both eyes: 6 prism diopters between them (6 sideways, 0 up and down; we say so from 4).',
    ],
    options: [['blank', 'stock', 'without prism. Choose lenses made to order.']],
    taken: ['material', 'coating'],
  },
  {
    name: 'a child in a drilled frame',
    frame: 'stint',
    entries: { ...MEASURED, ...both('sphere', '-2.00'), wearer: 'child' },
    says: ['so we make no drilled glasses for children', 'The frame Plover 42-15 would do.'],
    taken: null,
  },
  {
    name: 'a fitting height too low for two of the three corridors',
    frame: 'dunlin',
    entries: {
      ...MEASURED,
      ...both('sphere', '-1.00'),
      ...both('add', '2.00'),
      ...heights('17'),
      use: 'all',
      size: '50-19',
      design: 'progressive-long',
    },
    says: ['needs a fitting height of 22 mm. Yours is 17 mm in this frame, 5 mm too little.'],
    options: [
      ['design', 'progressive-short', 'fits'],
      ['design', 'progressive-middle', 'Yours is 17 mm in this frame'],
      ['design', 'progressive-long', 'Yours is 17 mm in this frame'],
      ['design', 'bifocal-28', 'this design needs the segment height'],
    ],
    taken: ['design'],
  },
  {
    name: 'a tint of category 4 and driving at night',
    frame: 'tern',
    entries: { ...MEASURED, ...both('sphere', '-1.00'), tint: 'glacier-brown' },
    says: [
      'category 4 (4.6 % of the light). Never wear it for driving, by day or by night. ',
      'Brown, sun would do.',
    ],
    taken: ['tint'],
  },
  {
    name: 'a progressive in a wrapped frame',
    frame: 'pratincole',
    entries: {
      ...MEASURED,
      ...both('sphere', '-1.00'),
      ...both('add', '2.00'),
      ...heights('22'),
      use: 'all',
    },
    says: ['This frame wraps by 19\u00b0. Progressive, short corridor is made for up to 10\u00b0.'],
    taken: null,
  },
  {
    name: 'a single lens power in a wrapped frame',
    frame: 'pratincole',
    entries: { ...MEASURED, ...both('sphere', '-4.00'), 'right.cylinder': '-1.00', 'right.axis': '90' },
    says: [
      'ordered as \u22123.86 \u22120.45 \u00d7 90 with prism 0.27 \u0394 base in instead of \u22124.00 \u22121.00 \u00d7 90',
      'Ordered, for how it is worn \u22123.86 \u22120.45 \u00d7 90 \u22123.45 \u22120.41 \u00d7 180',
    ],
    taken: ['material'],
  },
  {
    name: 'office lenses from an add',
    frame: 'godwit',
    entries: {
      ...MEASURED,
      ...both('sphere', '+0.50'),
      ...both('add', '2.00'),
      ...heights('22'),
      use: 'intermediate',
    },
    says: ['for screen and desk: far things look blurred.', 'Prescribed for this use +1.50 +1.50'],
    taken: ['material', 'coating'],
  },
  {
    name: 'nothing in this size or material',
    frame: 'curlew',
    entries: { ...MEASURED, ...both('sphere', '-13.00'), size: '53-20', material: 'standard-plastic' },
    says: [
      'The strongest meridian of this lens has \u221213.00 D.',
      'A way out This pair can be made with: 46-22, Thiourethane 1.67.',
    ],
    taken: ['size', 'material'],
  },
];
