/** Runs in the page: collects what a visitor feels of it, in a global named `felt`. */

export interface Felt {
  /** Slowest answer to an entry, ms by the clock. */
  event: number;
  /** Shift of the page within half a second of an entry, and after it. */
  shift: number;
  lateShift: number;
  /** What was moved. */
  moved: string[];
  /** How far the element with the focus was moved, px. */
  focusMovedPx: number;
}

interface Shift extends PerformanceEntry {
  readonly value: number;
  readonly hadRecentInput: boolean;
  readonly sources: readonly {
    readonly node: Node | null;
    readonly previousRect: DOMRect;
    readonly currentRect: DOMRect;
  }[];
}

export function watchFeelings(): void {
  const felt: Felt = { event: 0, shift: 0, lateShift: 0, moved: [], focusMovedPx: 0 };
  Object.assign(globalThis, { felt });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) felt.event = Math.max(felt.event, duration);
  }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
  new PerformanceObserver((list) => {
    for (const { value, hadRecentInput, sources } of list.getEntries() as Shift[]) {
      if (hadRecentInput) felt.shift += value;
      else felt.lateShift += value;
      for (const { node, previousRect, currentRect } of sources) {
        const element = node instanceof Element ? node : (node?.parentElement ?? null);
        const by = currentRect.top - previousRect.top;
        felt.moved.push(
          `${element?.nodeName.toLowerCase()}.${element?.getAttribute('class') ?? ''} ${by.toFixed(0)}`,
        );
        if (node?.contains(document.activeElement) && document.activeElement !== document.body)
          felt.focusMovedPx = Math.max(felt.focusMovedPx, Math.abs(by));
      }
    }
  }).observe({ type: 'layout-shift', buffered: true });
}
