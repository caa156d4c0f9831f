/** What a visitor entered into a form of the page before its script was there. */
import { type Entries, FIELDS, type Field } from '../configurator/fields.ts';

/** Entries of the fields below `root` that differ from how the page was built. */
export function typedIn(root: HTMLElement): Entries {
  const typed: Partial<Record<Field, string>> = {};
  for (const element of root.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[name]')) {
    const field = FIELDS.find((name) => name === element.name);
    if (field === undefined) continue;
    if (element instanceof HTMLSelectElement) {
      const [first] = [...element.options].filter((option) => option.defaultSelected);
      if (element.value !== (first ?? element.options[0])?.value) typed[field] = element.value;
    } else if (element.type === 'radio' || element.type === 'checkbox') {
      if (element.checked && !element.defaultChecked) typed[field] = element.value;
    } else if (element.value !== element.defaultValue) typed[field] = element.value;
  }
  return typed;
}
