/** Entries from outside held against what the shop has now: what it does not have is taken out, and told. */
import { USES } from '../../catalogue/design.ts';
import { type Frame, MOUNTINGS } from '../../catalogue/frame.ts';
import { BLANK_CHOICES, WEARERS } from '../../quote/request.ts';
import { type Entries, FIELDS, type Field } from '../fields.ts';
import type { ShopData } from '../shopData.ts';

export interface NotHad {
  readonly field: Field;
  readonly value: string;
}

/** Values that a field may hold; null where anything may be typed. */
function valuesOf(field: Field, frame: Frame, data: ShopData): readonly string[] | null {
  const ids = (all: readonly { readonly id: string }[]) => all.map(({ id }) => id);
  if (field.endsWith('.balance')) return ['yes'];
  if (/\.prism\d\.base$/.test(field)) return ['in', 'out', 'up', 'down'];
  switch (field) {
    case 'size':
      return ids(frame.sizes);
    case 'colourway':
      return frame.colourways.map(({ code }) => code);
    case 'design':
      return ids(data.designs);
    case 'material':
      return ids(data.materials);
    case 'tint':
      return ids(data.tints);
    case 'coating':
      return ids(data.coatings);
    case 'use':
      return USES;
    case 'wearer':
      return WEARERS;
    case 'blank':
      return BLANK_CHOICES;
    case 'own.mounting':
      return MOUNTINGS;
    case 'pd.mode':
      return ['each', 'both'];
    default:
      return null;
  }
}

/** Without this, the first of the shop would quietly take the place of a choice that is no longer there. */
export function onlyOffered(
  entries: Entries,
  frame: Frame,
  data: ShopData,
): { readonly entries: Entries; readonly notHad: readonly NotHad[] } {
  const left: Partial<Record<Field, string>> = {};
  const notHad: NotHad[] = [];
  for (const field of FIELDS) {
    const value = entries[field];
    if (value === undefined) continue;
    const values = valuesOf(field, frame, data);
    if (values === null || values.includes(value)) left[field] = value;
    else notHad.push({ field, value: value.slice(0, 40) });
  }
  return { entries: left, notHad };
}
