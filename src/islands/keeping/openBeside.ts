/** Explanations that the form links to open beside it while leaving would lose what was typed. */
import type { ReadableAtom } from 'nanostores';
import { say } from '../../catalogue/words.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';

const TOLD = 'ws-beside';

/** Turns the links of the page's worksheet, and says so in each. */
export function openBeside(losing: ReadableAtom<boolean>, { data }: Worksheet): void {
  const form = document.querySelector<HTMLElement>('.ws-form');
  const turn = (link: HTMLAnchorElement) => {
    const told = link.querySelector(`.${TOLD}`);
    if (!losing.get()) {
      told?.remove();
      link.removeAttribute('target');
    } else if (told === null) {
      link.target = '_blank';
      const words = document.createElement('span');
      words.className = `ws-unseen ${TOLD}`;
      words.textContent = ` ${say(data.words, 'showing.beside')}`;
      link.append(words);
    }
  };
  const turnAll = () => form?.querySelectorAll<HTMLAnchorElement>('a[href]').forEach(turn);
  losing.subscribe(turnAll);
  // Parts of the form that came since have links too; they are turned before anybody can press one.
  for (const sign of ['focusin', 'pointerover'] as const) form?.addEventListener(sign, turnAll);
}
