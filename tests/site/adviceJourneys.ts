/** Whole prescriptions in frames of the shop that are hard in one way each: what is typed and chosen. */
import type { Entries } from '../../src/configurator/fields.ts';

export interface Journey {
  readonly name: string;
  readonly frame: string;
  readonly entries: Entries;
  /** Of the first advice that can be taken here: the change's kind, null where all of it leads to another frame. */
  readonly taken: string | null;
}

const MEASURED: Entries = { 'pd.right': '31', 'pd.left': '31', issued: '2026-06-01', vertexTested: '12' };
const both = (field: string, text: string): Entries => ({
  [`right.${field}`]: text,
  [`left.${field}`]: text,
});
const heights = (mm: string): Entries => ({ 'fittingHeight.right': mm, 'fittingHeight.left': mm });

export const JOURNEYS: readonly Journey[] = [
  {
    name: '-9.50 in a large round frame',
    frame: 'curlew',
    entries: { ...MEASURED, ...both('sphere', '-9.50'), size: '53-20', material: 'standard-plastic' },
    taken: 'size',
  },
  {
    name: '+6.00 from the shelf, against lenses made to order',
    frame: 'sanderling',
    entries: { ...MEASURED, ...both('sphere', '+6.00'), blank: 'stock' },
    taken: 'blank',
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
    taken: 'material',
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
    taken: 'material',
  },
  {
    name: 'a child in a drilled frame',
    frame: 'stint',
    entries: { ...MEASURED, ...both('sphere', '-2.00'), wearer: 'child' },
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
    taken: 'design',
  },
  {
    name: 'a tint of category 4',
    frame: 'tern',
    entries: { ...MEASURED, ...both('sphere', '-1.00'), tint: 'glacier-brown' },
    taken: 'tint',
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
    taken: 'material',
  },
];
