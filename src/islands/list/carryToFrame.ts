/** Takes what was entered along to the frame that is opened, where the visitor ticked that. */
import { writeLink } from '../../configurator/keeping/link.ts';
import type { FrameListStores } from '../../configurator/list/frameList.ts';

/**
 * Writes it into the link's fragment, which is sent to no server, as the link is pressed and for that press alone, so
 * that an address that is copied from the list has nothing of it.
 */
export function carryToFrame({ entries, kept, taken }: FrameListStores): void {
  const press = ({ target, button }: MouseEvent) => {
    const link = target instanceof Element && target.closest<HTMLAnchorElement>('[data-frame] a[href]');
    if (!link || button > 1 || !taken.get() || kept.get()) return;
    link.hash = writeLink({ entries: entries.get() }, true);
    setTimeout(() => {
      link.hash = '';
    });
  };
  for (const sign of ['click', 'auxclick'] as const) document.addEventListener(sign, press);
}
