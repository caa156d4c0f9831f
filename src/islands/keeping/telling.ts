/** The words and figures that the parts loaded on demand speak with. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { Shop } from '../../catalogue/shop.ts';
import { type Slots, say } from '../../catalogue/words.ts';
import { type Figures, figuresIn } from '../useFigures.ts';

export interface Telling {
  readonly words: Words;
  readonly shop: Pick<Shop, 'name' | 'language' | 'path' | 'currency' | 'currencyDigits'>;
  /** A text by its whole key. */
  readonly say: (key: string, slots?: Slots) => string;
  /** A text of the worksheet; `key` without its leading `worksheet.`. */
  readonly t: (key: string, slots?: Slots) => string;
  readonly figures: Figures;
}

/** Words of a shop ready to be spoken. */
export function tellingOf(words: Words, shop: Telling['shop']): Telling {
  const t: Telling['t'] = (key, slots) => say(words, `worksheet.${key}`, slots);
  return { words, shop, say: (key, slots) => say(words, key, slots), t, figures: figuresIn({ t, shop }) };
}
