/** A pair that the address asks for is asked for in the other language too. */

/** The switch of languages takes along what stands behind `#` when it is pressed. */
export function carryFragment(): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-language]'))
    link.addEventListener('click', () => {
      link.hash = location.hash;
    });
}
