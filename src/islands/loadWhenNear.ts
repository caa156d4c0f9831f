/**
 * Loads a worksheet's script and the shop's data once its form is near the window, or the address
 * asks for a pair.
 */
import { asksForPair } from './keeping/arrival.ts';
import type { PageData, startWorksheet } from './startWorksheet.ts';

/** The part of a script that starts a worksheet. */
export type Starter = () => Promise<{ readonly startWorksheet: typeof startWorksheet }>;

async function load(root: HTMLElement, starter: Starter): Promise<void> {
  const text = document.getElementById('worksheet-data')?.textContent ?? '';
  const [{ startWorksheet }, response] = await Promise.all([starter(), fetch(root.dataset['shop'] ?? '')]);
  if (!response.ok) throw new Error(`The shop's data answered ${response.status}.`);
  startWorksheet(root, JSON.parse(text) as PageData, await response.json());
}

/** The form stays as it is: nothing in it is judged. */
function tellFailure(error: unknown): void {
  const told = document.getElementById('worksheet-failed');
  if (told !== null) told.hidden = false;
  console.error(error);
}

/** Starts the page's worksheet by what `starter` loads. */
export function loadWhenNear(starter: Starter): void {
  const root = document.getElementById('worksheet-root');
  if (root === null) return;
  if (asksForPair()) {
    load(root, starter).catch(tellFailure);
    return;
  }
  const near = new IntersectionObserver(
    (seen) => {
      if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
      near.disconnect();
      load(root, starter).catch(tellFailure);
    },
    { rootMargin: '50%' },
  );
  near.observe(root);
}
