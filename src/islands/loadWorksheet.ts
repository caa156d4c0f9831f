/** Loads the worksheet's script and the shop's data once its form is near the window, or something is kept for it. */
import type { PageData } from './startWorksheet.ts';

async function load(root: HTMLElement): Promise<void> {
  const text = document.getElementById('worksheet-data')?.textContent ?? '';
  const [{ startWorksheet }, response] = await Promise.all([
    import('./startWorksheet.ts'),
    fetch(root.dataset['shop'] ?? ''),
  ]);
  if (!response.ok) throw new Error(`The shop's data answered ${response.status}.`);
  startWorksheet(root, JSON.parse(text) as PageData, await response.json());
}

/** The form stays as it is: nothing in it is judged. */
function tellFailure(error: unknown): void {
  const told = document.getElementById('worksheet-failed');
  if (told !== null) told.hidden = false;
  console.error(error);
}

const root = document.getElementById('worksheet-root');
if (root !== null) {
  const near = new IntersectionObserver(
    (seen) => {
      if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
      near.disconnect();
      load(root).catch(tellFailure);
    },
    { rootMargin: '50%' },
  );
  near.observe(root);
}
