/** The browser's own question before a page is left. */

const ask = (event: BeforeUnloadEvent) => event.preventDefault();

/** Has it asked, or no longer. Listened to only where there is something to lose: a listener keeps a page awake. */
export function askBeforeLeaving(on: boolean): void {
  if (on) addEventListener('beforeunload', ask);
  else removeEventListener('beforeunload', ask);
}
