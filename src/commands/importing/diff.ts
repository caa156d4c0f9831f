/** What an import changes, line by line. */
import type { Step } from './files.ts';

const linesOf = (text: string) => text.replaceAll('\r\n', '\n').replace(/\n$/, '').split('\n');

/** Changed lines of a file: those gone with their number and a minus, the new ones with a plus. */
function changedLines(before: string, after: string): string[] {
  const [old, now] = [linesOf(before), linesOf(after)];
  let top = 0;
  while (top < old.length && old[top] === now[top]) top += 1;
  let end = 0;
  while (end < Math.min(old.length, now.length) - top && old.at(-1 - end) === now.at(-1 - end)) end += 1;
  const [gone, come] = [old.slice(top, old.length - end), now.slice(top, now.length - end)];
  if (gone.length !== come.length) return [`@@ line ${top + 1}`, ...gone.map(minus), ...come.map(plus)];
  return gone.flatMap((line, at) =>
    line === come[at] ? [] : [`@@ line ${top + at + 1}`, minus(line), plus(come[at] ?? '')],
  );
}

const minus = (line: string) => `-${line}`;
const plus = (line: string) => `+${line}`;

/** The text of the difference: new files whole, changed ones by their changed lines. */
export function diffText(steps: readonly Step[]): string {
  return steps
    .map(({ path, before, text }) =>
      before === null
        ? [`--- nothing`, `+++ ${path}`, ...linesOf(text).map(plus)].join('\n')
        : [`--- ${path}`, `+++ ${path}`, ...changedLines(before, text)].join('\n'),
    )
    .join('\n\n');
}
