/**
 * Calls `stop` once when this process is asked to end: by Ctrl-C, a request to terminate, or because its parent
 * is gone. The last one matters under npm, whose shell dies on a signal without passing it on. A closed terminal
 * ends the process anyway, unless it was started under nohup, which a listener of ours would undo.
 */
export function whenAskedToStop(stop: () => void): void {
  const parent = process.ppid;
  let asked = false;
  const once = () => {
    if (asked) return;
    asked = true;
    stop();
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, once);
  setInterval(() => process.ppid !== parent && once(), 300).unref();
}
