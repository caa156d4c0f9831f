/** What goes along to the page in the other language. */
import { writeLink } from '../configurator/keeping/link.ts';
import { packagePart } from '../configurator/keeping/parts.ts';
import type { Worksheet } from '../configurator/worksheet.ts';

/** The switch of languages takes the package along as it stands when it is pressed, never the prescription. */
export function carryPackage(sheet: Worksheet): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-language]'))
    link.onpointerdown = link.onclick = () => {
      link.hash = fragmentOf(sheet);
    };
}

function fragmentOf({ entries, kept }: Worksheet): string {
  // What is held or kept in this browser is found there by the other page.
  if (kept.get() || /^#(?:pair|aside)-/.test(location.hash)) return location.hash;
  const chosen = packagePart(entries.get());
  return Object.keys(chosen).length > 0 ? writeLink({ entries: chosen }, false) : location.hash;
}
