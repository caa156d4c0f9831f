/** The sentence that a worksheet's standing is told in. */
import { say } from '../catalogue/words.ts';
import type { Standing } from '../configurator/standing.ts';
import type { Worksheet } from '../configurator/worksheet.ts';

/** The engine's verdict, or what it waits for. */
export function sentenceOf({ t, data }: Worksheet, { kind, needs }: Standing): string {
  if (kind === 'mend' || kind === 'needs') return t(`ticket.${kind}`);
  return kind === 'refused' && needs.length > 0 ? t('ticket.refusedYet') : say(data.words, `verdict.${kind}`);
}
