/** The tasks of a page's own thread, by a trace that is light enough not to make them much longer. */
import type { CDPSession } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of the thread, microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Begins a trace; `end` gives what happened. */
export async function startTasks(cdp: CDPSession): Promise<{ end: () => Promise<readonly TraceEvent[]> }> {
  const events: TraceEvent[] = [];
  const take = ({ value }: { value: unknown[] }) => events.push(...(value as TraceEvent[]));
  cdp.on('Tracing.dataCollected', take);
  await cdp.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', '__metadata'], excludedCategories: ['*'] },
  });
  return {
    end: async () => {
      const complete = new Promise((done) => cdp.once('Tracing.tracingComplete', done));
      await cdp.send('Tracing.end');
      await complete;
      cdp.off('Tracing.dataCollected', take);
      return events;
    },
  };
}

/** Processor time of the longest task of a page's main thread, ms; 0 where there was none. */
export function longestTaskMs(events: readonly TraceEvent[]): number {
  const key = ({ pid, tid }: TraceEvent) => `${pid} ${tid}`;
  const main = new Set(
    events.filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain').map(key),
  );
  const tasks = events.filter((event) => event.name.endsWith('RunTask') && main.has(key(event)));
  return Math.max(0, ...tasks.map(({ tdur = 0 }) => tdur)) / 1000;
}
