/** The sentence that a worksheet's standing is told in. */
import type { Words } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Mark } from '../configurator/optionRows.ts';
import { isShopsWork } from '../configurator/shopsWork.ts';
import type { Standing } from '../configurator/standing.ts';
import type { Worksheet } from '../configurator/worksheet.ts';

/** The sign that a standing is told with. */
export const STANDING_SIGNS: Readonly<Record<Standing['kind'], Mark>> = {
  mend: 'care',
  needs: 'open',
  makeable: 'fits',
  care: 'care',
  refused: 'refused',
};

/** What the sentence is said with: a worksheet, or words alone. */
interface Telling {
  readonly t: Worksheet['t'];
  readonly data: { readonly words: Words };
}

/** The engine's verdict, or what it waits for. */
export function sentenceOf({ t, data }: Telling, { kind, needs, faults, findings }: Standing): string {
  const wrong = new Set(faults.map(({ field }) => field)).size;
  if (kind === 'mend' && wrong > 1) return t('ticket.mendMany', { count: wrong });
  if (kind === 'mend' || kind === 'needs') return t(`ticket.${kind}`);
  const minded = findings.filter(({ level }) => level === 'caution');
  if (kind === 'care' && minded.every(isShopsWork)) return t('ticket.careOurs');
  return kind === 'refused' && needs.length > 0 ? t('ticket.refusedYet') : say(data.words, `verdict.${kind}`);
}

/** What the total is called: no plain total while nobody knows whether the pair can be made. */
export function totalLabel({ t }: Pick<Telling, 't'>, { kind, needs }: Standing): string {
  if (kind === 'makeable' || kind === 'care') return t('ticket.total');
  return t(kind === 'refused' && needs.length === 0 ? 'ticket.totalRefused' : 'ticket.totalOpen');
}
