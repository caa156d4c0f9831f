/** Notices that the address asks for a pair: a link, or one that this browser holds. */
import type { Worksheet } from '../../configurator/worksheet.ts';

/** Whether it does: the worksheet is then loaded wherever the window stands. */
export const asksForPair = (): boolean => /^#(?:p\d+(?:;|$)|(?:pair|aside)-\d)/.test(location.hash);

/** Puts a pair that the address asks for on the worksheet, now and whenever the fragment changes. */
export function watchAddress(stores: Worksheet, begin: () => void): void {
  const go = async (changed: boolean) => {
    if (!asksForPair()) return;
    begin();
    const { arrive } = await import('./arrive.tsx');
    await arrive(stores, changed);
  };
  void go(false);
  addEventListener('hashchange', () => void go(true));
}
