/** From a path in the values of a file back to its place in the text. */
import { type Document, isAlias, isMap, isScalar, isSeq, type Node } from 'yaml';
import type { FieldPath } from '../fault.ts';

/** `[start, end)` in the YAML text. */
export type Range = readonly [number, number];

function follow(node: Node | null | undefined, document: Document): Node | null {
  let found = node ?? null;
  for (let hops = 0; isAlias(found) && hops < 50; hops += 1) found = found.resolve(document) ?? null;
  return found;
}

function rangeOf(node: Node | null | undefined): Range | null {
  return node?.range ? [node.range[0], Math.max(node.range[1], node.range[0])] : null;
}

interface Step {
  readonly key: Node | null;
  readonly value: Node | null;
}

function step(node: Node | null, part: string | number): Step | null {
  if (isSeq(node) && typeof part === 'number') {
    const value = node.items[part] as Node | undefined;
    return value === undefined ? null : { key: null, value };
  }
  if (!isMap(node)) return null;
  // The last of two equal keys is the one whose value counts.
  const pair = node.items.findLast(({ key }) => isScalar(key) && String(key.value) === String(part));
  return pair === undefined ? null : { key: pair.key as Node, value: pair.value as Node | null };
}

/**
 * The place of the value (or of its key) at `path`. A value that is missing is shown at the first key of what
 * should hold it; in an empty file that is its beginning.
 */
export function locate(document: Document, path: FieldPath, at: 'value' | 'key'): Range {
  let node = follow(document.contents as Node | null, document);
  let holder: Range | null = firstKey(node);
  for (const [index, part] of path.entries()) {
    const found = step(node, part);
    if (found === null) return holder ?? [0, 0];
    const keyRange = rangeOf(found.key);
    if (index === path.length - 1) {
      const valueRange = rangeOf(found.value);
      const empty = valueRange === null || valueRange[0] === valueRange[1];
      if ((at === 'key' || empty) && keyRange !== null) return keyRange;
      return valueRange ?? holder ?? [0, 0];
    }
    node = follow(found.value, document);
    holder = firstKey(node) ?? keyRange ?? rangeOf(found.value) ?? holder;
  }
  return holder ?? [0, 0];
}

function firstKey(node: Node | null): Range | null {
  if (isMap(node)) return rangeOf(node.items[0]?.key as Node | undefined);
  return isSeq(node) ? rangeOf(node) : null;
}

/** What stands in the file for the value at `path`, or null where there is nothing. */
export function sourceAt(document: Document, text: string, path: FieldPath): string | null {
  let node = follow(document.contents as Node | null, document);
  for (const part of path) node = follow(step(node, part)?.value, document);
  const range = rangeOf(node);
  return range === null ? null : text.slice(range[0], range[1]);
}
