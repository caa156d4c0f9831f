/**
 * Calls `stop` once when this process is asked to end: by Ctrl-C, a request to terminate, a closed terminal, or
 * because its parent is gone. The last one matters under npm, whose shell dies on a signal without passing it on.
 */
export function whenAskedToStop(stop: () => void): void {
  const parent = process.ppid;
  let asked = false;
  const once = () => {
    if (asked) return;
    asked = true;
    stop();
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, once);
  setInterval(() => process.ppid !== parent && once(), 300).unref();
}
