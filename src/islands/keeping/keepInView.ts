/** Keeps the field with the focus out from under the ticket, where that lies as a bar at the foot of the window. */

/** Begins to; nothing happens on a page without a ticket. */
export function keepInView(): void {
  const ticket = document.getElementById('ws-ticket');
  const head = ticket?.querySelector<HTMLElement>('.ws-verdict');
  const toggle = head?.querySelector<HTMLElement>('.ws-toggle');
  if (!ticket || !head || !toggle) return;
  const isOpen = () => toggle.getAttribute('aria-expanded') === 'true';
  // On a wide screen the ticket has a column of its own, and no toggle.
  const isBar = () => toggle.offsetParent !== null;
  const isCovered = (at: Element) => {
    const [field, bar] = [at.getBoundingClientRect(), ticket.getBoundingClientRect()];
    return isBar() && field.bottom > bar.top && field.top < bar.bottom;
  };
  const uncover = () => {
    const at = document.activeElement;
    if (at === null || at.closest('.ws-form') === null || !isCovered(at)) return;
    // Its height is then observed, which leads here again.
    if (isOpen()) toggle.click();
    else at.scrollIntoView({ block: 'nearest' });
  };
  const sizes = new ResizeObserver(() => {
    const bar = `${head.offsetHeight + ticket.clientTop}px`;
    // No property of the root that is inherited: the whole page would be styled again.
    document.documentElement.style.scrollPaddingBlockEnd = isBar() ? `calc(${bar} + 0.6rem)` : '';
    ticket.style.setProperty('--ws-bar', bar);
    uncover();
  });
  sizes.observe(ticket);
  sizes.observe(head);
  // A frame later: browsers bring what gets the focus into the window first.
  document.addEventListener('focusin', () => requestAnimationFrame(uncover));
}
