/** Loads the list's script once somebody uses its form, or at once where a prescription is kept on this device. */
import { recall } from '../../configurator/keeping.ts';
import { deviceShelf } from '../deviceShelf.ts';
import type { ListPageData } from './startList.ts';

async function load(root: HTMLElement): Promise<void> {
  const text = document.getElementById('list-data')?.textContent ?? '';
  const { startList } = await import('./startList.ts');
  startList(root, JSON.parse(text) as ListPageData);
}

/** The page stays as it is, and whole. */
function tellFailure(error: unknown): void {
  const told = document.getElementById('list-failed');
  if (told !== null) told.hidden = false;
  console.error(error);
}

const root = document.getElementById('list-root');
if (root !== null) {
  let begun = false;
  const begin = () => {
    if (begun) return;
    begun = true;
    load(root).catch(tellFailure);
  };
  // Whoever was faster than this script gives no sign again.
  const used = root.matches(':focus-within, :has(input[type="checkbox"]:checked)');
  if (used || recall(deviceShelf(), '') !== null) begin();
  for (const sign of ['focusin', 'pointerdown', 'pointerenter'] as const)
    root.addEventListener(sign, begin, { once: true });
}
