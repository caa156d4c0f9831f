/** Which texts of each noun a translation gives. Numbers, prices, ids and dates are never among them. */
/** What a translation holds for one field of a noun. */
export type TextShape =
  | 'text'
  /** A name, which may stay as it is. */
  | 'name'
  /** A list of as many texts, in the same order. */
  | 'texts'
  /** For a list of things: this text of each, in the same order. */
  | { readonly inOrder: string }
  /** For a list of things: a map from this field of each to one text of it, or to several. */
  | { readonly byKey: string; readonly text: string }
  | { readonly byKey: string; readonly texts: readonly string[] }
  | { readonly group: TextFields };

export interface TextFields {
  readonly [field: string]: TextShape;
}

/** Everything that has texts to translate; outlines are figures alone. */
export type TranslatedKind =
  | 'shop'
  | 'frames'
  | 'designs'
  | 'materials'
  | 'tints'
  | 'coatings'
  | 'promotions'
  | 'pages';

const option: TextFields = { name: 'text', summary: 'text', limits: { inOrder: 'because' } };
const surcharges: TextShape = { inOrder: 'label' };

export const TEXTS: Readonly<Record<TranslatedKind, TextFields>> = {
  shop: {
    name: 'name',
    tagline: 'text',
    licence: 'text',
    places: { byKey: 'code', text: 'name' },
    shipping: { inOrder: 'label' },
    tax: { inOrder: 'label' },
    exemptions: { byKey: 'id', texts: ['label', 'reason'] },
    order: {
      group: {
        consents: { byKey: 'id', text: 'text' },
        payments: { byKey: 'id', texts: ['label', 'words'] },
      },
    },
    workroom: { group: { billingNote: 'text', billing: { byKey: 'code', text: 'label' } } },
    collections: { byKey: 'id', texts: ['name', 'summary'] },
  },
  frames: {
    model: 'name',
    summary: 'text',
    material: 'text',
    comesFitted: 'text',
    inTheBox: 'texts',
    colourways: { byKey: 'code', text: 'name' },
    notOffered: { inOrder: 'because' },
    pictures: { inOrder: 'alt' },
  },
  designs: { ...option, corridor: { group: { definition: 'text' } }, surcharges },
  materials: { ...option, surcharges },
  tints: { ...option, states: { inOrder: 'name' } },
  coatings: option,
  promotions: { title: 'text', sentence: 'text' },
  pages: { title: 'text', description: 'text' },
};
