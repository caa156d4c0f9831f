/** The sentence that a worksheet's standing is told in. */
import type { Words } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Standing } from '../configurator/standing.ts';
import type { Worksheet } from '../configurator/worksheet.ts';

/** What the sentence is said with: a worksheet, or words alone. */
interface Telling {
  readonly t: Worksheet['t'];
  readonly data: { readonly words: Words };
}

/** The engine's verdict, or what it waits for. */
export function sentenceOf({ t, data }: Telling, { kind, needs }: Standing): string {
  if (kind === 'mend' || kind === 'needs') return t(`ticket.${kind}`);
  return kind === 'refused' && needs.length > 0 ? t('ticket.refusedYet') : say(data.words, `verdict.${kind}`);
}
