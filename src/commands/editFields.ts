/**
 * Changes single fields in the text of a content file. Only the place itself is touched: remarks, order, line ends and
 * everything below the fields stay as the owner wrote them.
 */
import { isMap, isScalar, isSeq, type Node, parseDocument, type Scalar, type YAMLSeq } from 'yaml';

/** Keys and indexes that lead to a value. */
type Path = readonly (string | number)[];

/** Where the YAML of a file lies: between its lines --- in Markdown, else all of it. */
function yamlOf(source: string): { readonly from: number; readonly to: number } | null {
  const opening = /^\uFEFF?---[ \t]*\r?\n/.exec(source);
  if (opening === null) return { from: source.startsWith('\uFEFF') ? 1 : 0, to: source.length };
  const closing = /^---[ \t]*$/m.exec(source.slice(opening[0].length).replace(/\r(?=\n)/g, ' '));
  return closing === null ? null : { from: opening[0].length, to: opening[0].length + closing.index };
}

interface Found {
  readonly yaml: string;
  readonly from: number;
  readonly to: number;
  readonly node: Node;
  readonly values: unknown;
}

function find(source: string, path: Path): Found | null {
  const place = yamlOf(source);
  if (place === null) return null;
  const yaml = source.slice(place.from, place.to);
  const document = parseDocument(yaml, { version: '1.2', logLevel: 'error' });
  const node = document.errors.length === 0 ? document.getIn(path, true) : undefined;
  const isNode = isScalar(node) || isSeq(node) || isMap(node);
  return isNode ? { yaml, ...place, node, values: document.toJS() } : null;
}

/** The edit done, when the file then says what is wanted and nothing else has changed. */
function edited(source: string, found: Found, at: readonly [number, number], by: string, wanted: unknown) {
  const yaml = found.yaml.slice(0, at[0]) + by + found.yaml.slice(at[1]);
  const after = parseDocument(yaml, { version: '1.2', logLevel: 'error' });
  if (after.errors.length > 0 || JSON.stringify(after.toJS()) !== JSON.stringify(wanted)) return null;
  return source.slice(0, found.from) + yaml + source.slice(found.to);
}

function changed(values: unknown, path: Path, change: (value: unknown) => unknown): unknown {
  const [part, ...rest] = path;
  if (part === undefined) return change(values);
  if (Array.isArray(values))
    return values.map((item, at) => (at === part ? changed(item, rest, change) : item));
  const entries = Object.entries(values as Record<string, unknown>);
  return Object.fromEntries(
    entries.map(([key, value]) => [key, key === part ? changed(value, rest, change) : value]),
  );
}

/** The text of a file with another text at `path`, quoted as the one before was; null where that cannot be done alone. */
export function withText(source: string, path: Path, text: string): string | null {
  const found = find(source, path);
  if (found === null || !isScalar(found.node) || !found.node.range) return null;
  const [from, to] = found.node.range;
  const quote = (found.node as Scalar).type === 'QUOTE_SINGLE' ? "'" : '"';
  if (/["'\\\r\n]/.test(text)) return null;
  const wanted = changed(found.values, path, () => text);
  return edited(source, found, [from, to], `${quote}${text}${quote}`, wanted);
}

/**
 * The text of a file with one more item at the end of the list at `path`, given as YAML; null where that cannot be done
 * alone.
 */
export function withItem(source: string, path: Path, item: string): string | null {
  const found = find(source, path);
  if (found === null || !isSeq(found.node) || !found.node.range) return null;
  const value: unknown = parseDocument(item, { version: '1.2' }).toJS();
  const wanted = changed(found.values, path, (list) => [...(list as unknown[]), value]);
  const eol = source.includes('\r\n') ? '\r\n' : '\n';
  const [at, by] = (found.node.flow ? inFlow : inBlock)(
    found.yaml,
    found.node,
    item.trimEnd().split('\n'),
    eol,
  );
  return edited(source, found, [at, at], by, wanted);
}

function inBlock(yaml: string, { items }: YAMLSeq, lines: readonly string[], eol: string): [number, string] {
  const first = (items[0] as Node | undefined)?.range?.[0] ?? 0;
  const dash = yaml.lastIndexOf('-', first);
  const indent = yaml.slice(yaml.lastIndexOf('\n', dash) + 1, dash);
  const end = (items.at(-1) as Node | undefined)?.range?.[1] ?? yaml.length;
  // A value ends before its remark; the item ends with its line.
  const next = yaml.indexOf('\n', Math.max(0, end - 1));
  const at = next < 0 ? yaml.length : next + 1;
  const open = at > 0 && yaml[at - 1] !== '\n' ? eol : '';
  return [at, open + lines.map((line, n) => `${indent}${n === 0 ? '- ' : '  '}${line}${eol}`).join('')];
}

function inFlow(_yaml: string, { items, range }: YAMLSeq, lines: readonly string[]): [number, string] {
  const last = (items.at(-1) as Node | undefined)?.range?.[1];
  const [only = ''] = lines;
  const written = lines.length === 1 ? only : `{ ${lines.join(', ')} }`;
  return last === undefined ? [(range?.[1] ?? 1) - 1, written] : [last, `, ${written}`];
}
