/** Writes out what a component without state of its own would put on a page. */
import { type ComponentChild, Fragment, isValidElement, type VNode } from 'preact';

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** The markup of a tree; components are called, and have to get along without hooks. */
export function markup(node: ComponentChild | readonly ComponentChild[]): string {
  if (Array.isArray(node)) return node.map(markup).join('');
  if (node === null || node === undefined || typeof node === 'boolean') return '';
  if (!isValidElement(node)) return escaped(String(node));
  const { type, props } = node as VNode<Record<string, unknown>>;
  const children = () => markup(props['children'] as ComponentChild);
  if (type === Fragment) return children();
  if (typeof type === 'function') return markup((type as (props: object) => ComponentChild)(props));
  const attributes = Object.entries(props)
    .filter(
      ([name, value]) => name !== 'children' && value !== undefined && value !== null && value !== false,
    )
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`);
  return `<${type}${attributes.join('')}>${children()}</${type}>`;
}

/** Only what is read out: no path, no number of a place. */
export const textOf = (html: string): string =>
  html
    .replace(/<\/(figcaption|p|li|tr|title|desc|caption|svg)>/g, '\n')
    .replace(/<\/(th|td)>/g, ' | ')
    .replace(/<[^>]+>/g, '')
    .replace(/\u00a0/g, ' ')
    .replace(/[ \t]+/g, ' ')
    .replace(/\n\s+/g, '\n')
    .trim();
