/**
 * Puts public keys into the text of shop.yaml and takes them out. Only the place itself is touched: remarks, order and
 * line ends of the file stay as the owner wrote them.
 */
import { isMap, isScalar, isSeq, type Pair, parseDocument, type YAMLMap, type YAMLSeq } from 'yaml';

interface Edit {
  readonly from: number;
  readonly to: number;
  readonly by: string;
}

/** The text with `key` added to the list below order and publicKeys; null where this file has no place for it. */
export function withPublicKey(source: string, key: string): string | null {
  return edited(
    source,
    (root) => addition(source, root, key),
    (keys) => [...keys, key],
  );
}

/** The text without `key`; null where it is not in the list, or cannot be taken out by itself. */
export function withoutPublicKey(source: string, key: string): string | null {
  return edited(
    source,
    (root) => removal(source, root, key),
    (keys) => keys.filter((one) => one !== key),
  );
}

/** The edit done, when the file then says what is wanted and, keys apart, what it said before. */
function edited(
  source: string,
  edit: (root: YAMLMap) => Edit | null,
  wanted: (keys: readonly string[]) => readonly string[],
): string | null {
  const { contents, errors } = parseDocument(source);
  const change = errors.length === 0 && isMap(contents) && !contents.flow ? edit(contents) : null;
  if (change === null) return null;
  const text = source.slice(0, change.from) + change.by + source.slice(change.to);
  const [before, after] = [source, text].map((each) => parseDocument(each));
  if (before === undefined || after === undefined || after.errors.length > 0) return null;
  const keysOf = (document: typeof before): readonly string[] => {
    const keys: unknown = document.toJS().order?.publicKeys;
    return Array.isArray(keys) ? keys : [];
  };
  const rest = (document: typeof before) => {
    const { order, ...others } = document.toJS();
    const { publicKeys: _, ...terms } = order ?? {};
    return JSON.stringify([terms, others]);
  };
  const right = JSON.stringify(keysOf(after)) === JSON.stringify(wanted(keysOf(before)));
  return right && rest(before) === rest(after) ? text : null;
}

const pairOf = (map: YAMLMap, key: string): Pair | undefined =>
  map.items.find((item) => isScalar(item.key) && item.key.value === key);

const startOf = (node: unknown): number => (node as { range: [number, number, number] }).range[0];
const endOf = (node: unknown): number => (node as { range: [number, number, number] }).range[1];

const lineEnd = (source: string): string => (source.includes('\r\n') ? '\r\n' : '\n');
const lineStart = (source: string, at: number): number => source.lastIndexOf('\n', at - 1) + 1;
const nextLine = (source: string, at: number): number => {
  const end = source.indexOf('\n', at);
  return end < 0 ? source.length : end + 1;
};

/** `text` as lines of their own at `at`, the begin of a line or the end of the file. */
function lines(source: string, at: number, ...text: string[]): Edit {
  const open = at > 0 && source[at - 1] !== '\n' ? lineEnd(source) : '';
  return { from: at, to: at, by: open + text.map((line) => line + lineEnd(source)).join('') };
}

function addition(source: string, root: YAMLMap, key: string): Edit | null {
  const order = pairOf(root, 'order');
  const end = source.length;
  if (order === undefined) return lines(source, end, 'order:', '  publicKeys:', `    - ${key}`);
  if (!isMap(order.value) || order.value.flow) return null;
  const list = pairOf(order.value, 'publicKeys');
  if (list === undefined) {
    const first = startOf(order.value.items[0]?.key);
    const indent = source.slice(lineStart(source, first), first);
    return lines(source, lineStart(source, first), `${indent}publicKeys:`, `${indent}  - ${key}`);
  }
  if (!isSeq(list.value)) {
    const colon = source.indexOf(':', endOf(list.key)) + 1;
    return { from: colon, to: colon, by: ` [${key}]` };
  }
  return inList(source, list.value, key);
}

function inList(source: string, { items, flow, range }: YAMLSeq, key: string): Edit | null {
  if (!range) return null;
  const last = items.at(-1);
  if (flow) {
    const at = last === undefined ? range[1] - 1 : endOf(last);
    return { from: at, to: at, by: last === undefined ? key : `, ${key}` };
  }
  const line = source.slice(lineStart(source, startOf(last)), startOf(last));
  return lines(source, nextLine(source, endOf(last)), line + key);
}

function removal(source: string, root: YAMLMap, key: string): Edit | null {
  const order = pairOf(root, 'order')?.value;
  const list = isMap(order) ? pairOf(order, 'publicKeys')?.value : undefined;
  if (!isSeq(list)) return null;
  const at = list.items.findIndex((item) => isScalar(item) && item.value === key);
  const item = list.items[at];
  if (item === undefined) return null;
  if (!list.flow)
    return { from: lineStart(source, startOf(item)), to: nextLine(source, endOf(item)), by: '' };
  const [before, after] = [list.items[at - 1], list.items[at + 1]];
  if (after !== undefined) return { from: startOf(item), to: startOf(after), by: '' };
  return { from: before === undefined ? startOf(item) : endOf(before), to: endOf(item), by: '' };
}
