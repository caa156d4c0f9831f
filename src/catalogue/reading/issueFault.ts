/** Says in the owner's words what a schema refused, and what to write instead where that can be told. */
import type { FaultDetail } from '../fault.ts';
import { listNames, nearest } from '../nearest.ts';
import { type SchemaIssue, valueAt } from '../schema/parse.ts';

/** The detail of a fault; `source` is the value as it stands in the file. */
export function explainIssue(issue: SchemaIssue, raw: unknown, source: string | null): FaultDetail {
  const name = String(issue.path.at(-1) ?? '');
  const { expected } = issue;
  if (issue.kind === 'unknown-key') return unknownKey(name, issue.choices ?? []);
  const value = valueAt(raw, issue.path);
  if (issue.kind === 'missing') {
    const hint = typeof issue.path.at(-1) === 'number' ? 'Add the item.' : `Add a line "${name}: ...".`;
    return { code: 'missing-field', expected: `${name}: ${expected}`, received: 'nothing', hint };
  }
  const received = describe(value, source);
  const code = issue.code ?? (issue.kind === 'type' ? 'wrong-type' : 'wrong-value');
  return { code, expected, received, hint: issue.hint ?? suggest(issue, value, source) };
}

function unknownKey(key: string, known: readonly string[]): FaultDetail {
  const meant = nearest(key, known);
  return {
    code: 'unknown-key',
    expected: `one of the fields ${known.join(', ')}`,
    received: `"${key}"`,
    hint: meant === null ? 'Remove it, or use one of the fields above.' : `Did you mean "${meant}"?`,
  };
}

/** A value as the owner sees it, cut to a line. */
function describe(value: unknown, source: string | null): string {
  if (value === undefined || value === null) return 'nothing';
  const shown = cut(source ?? JSON.stringify(value));
  if (typeof value === 'string') return `the text ${cut(JSON.stringify(value))}`;
  if (typeof value === 'number') return `the number ${shown}`;
  if (typeof value === 'boolean') return `the word ${shown}, which means yes or no`;
  if (Array.isArray(value)) return shown.startsWith('[') ? `the list ${shown}` : `a list of ${value.length}`;
  const keys = Object.keys(value);
  return keys.length === 0 ? 'a group without fields' : `a group with ${cut(listNames(keys, 6))}`;
}

function cut(text: string): string {
  const line = text.replace(/\s*\n\s*/g, ' ');
  return line.length > 80 ? `${line.slice(0, 79)}…` : line;
}

const YES = /^(?:yes|on|y|true)$/i;
const NO = /^(?:no|off|n|false)$/i;

function suggest(issue: SchemaIssue, value: unknown, source: string | null): string {
  const { choices = [], wanted = [] } = issue;
  if (value === null || value === undefined)
    return 'Write the value behind the colon, in quotes if it begins with #.';
  if (typeof value === 'string') {
    const meant = nearest(value, choices);
    if (meant !== null) return `Did you mean ${meant}?`;
    if (/^[0-9a-f]{6}$/i.test(value) && issue.expected.startsWith('a colour')) return `Write "#${value}".`;
    if (wanted.includes('boolean') && YES.test(value)) return 'Write true.';
    if (wanted.includes('boolean') && NO.test(value)) return 'Write false.';
    if (wanted.includes('number') || wanted.includes('int')) return suggestNumber(value, issue.expected);
  }
  if (typeof value !== 'object') {
    const written = cut(source ?? String(value));
    if (wanted.includes('array')) return `Write [${written}].`;
    const decimals = /a price .*with (\d) digits? after the point/.exec(issue.expected)?.[1];
    if (typeof value === 'number' && value >= 0 && decimals !== undefined)
      return `Put it in quotes: "${/^\d+$/.test(written) ? value.toFixed(Number(decimals)) : written}".`;
    if (wanted.includes('string') && typeof value !== 'string') return `Put it in quotes: "${written}".`;
  }
  return `Write ${issue.expected}.`;
}

/** `51,5 mm` was meant as 51.5; `5o` and `5o1` may be any number. */
function suggestNumber(value: string, expected: string): string {
  const figures = /^\s*([-+−]?\d+(?:[.,]\d+)?)(?![oOlI])\s*([^\s\d]*)\s*$/.exec(value);
  if (figures === null) return 'Write digits and a point only, without quotes.';
  const number = (figures[1] ?? '').replace(',', '.').replace('−', '-').replace('+', '');
  // A share is written as a number up to 1.
  if (figures[2] === '%' && / to 1$/.test(expected))
    return `Write ${Number((Number(number) / 100).toPrecision(6))}.`;
  return `Write ${number}, without quotes and without a unit.`;
}
