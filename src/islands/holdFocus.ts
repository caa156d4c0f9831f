/**
 * Keeps the field or choice with the focus where it is in the window, whatever grows or shrinks above it. Some browsers
 * do so by themselves, but not for a row of a table, and some do not at all.
 */

/** Looks where the focus is; what it returns brings it back there. */
export function holdFocus(): () => void {
  const at = globalThis.document?.activeElement?.closest('.ws-form') ? document.activeElement : null;
  if (at === null) return () => {};
  const { top } = at.getBoundingClientRect();
  return () => {
    const moved = at.getBoundingClientRect().top - top;
    const wasSeen = top >= 0 && top < innerHeight;
    if (at === document.activeElement && wasSeen && Math.abs(moved) >= 1)
      scrollBy({ top: moved, behavior: 'instant' });
  };
}
