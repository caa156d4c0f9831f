/** Boxes that a visitor ticked on a page before its script was there, and that are no entry of a field. */
import { FIELDS } from '../configurator/fields.ts';

/** Remembers the ticks below `root`; what it returns ticks them again, once somebody listens. */
export function tickedEarly(root: HTMLElement): () => void {
  const ticked = [...root.querySelectorAll<HTMLInputElement>('input[type="checkbox"]:checked')].filter(
    (box) => !box.defaultChecked && !FIELDS.some((field) => field === box.name),
  );
  return () => {
    for (const box of ticked) {
      box.checked = true;
      box.dispatchEvent(new Event('change', { bubbles: true }));
    }
  };
}
