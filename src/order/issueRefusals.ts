/** What the schema found wrong, as refusals with the place, what was expected and what stands there. */
import type * as z from 'zod/mini';
import { briefly, type Refusal, refusal } from './refusal.ts';

/** Refusals of one issue; `root` is the order that was looked at. */
export function issueRefusals(issue: z.core.$ZodIssue, root: unknown): Refusal[] {
  const path = issue.path.map(String).join('.');
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) =>
      refusal('unknown-key', { path: path === '' ? '(whole file)' : path, key: briefly(key) }),
    );
  const found = issue.path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    root,
  );
  return [refusal('malformed', { path, expected: expectation(issue), found: briefly(found) })];
}

const KINDS: Readonly<Record<string, string>> = {
  object: 'a map of keys',
  record: 'a map of keys',
  array: 'a list',
  string: 'a text',
  number: 'a number',
  boolean: 'true or false',
};

/** Our own phrase where the schema gives one; for the request's part, what zod knows. */
function expectation(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_value') return issue.values.map(String).join(', ');
  if (issue.message !== '' && issue.message !== 'Invalid input') return issue.message;
  if (issue.code === 'invalid_type') return KINDS[issue.expected] ?? issue.expected;
  if (issue.code === 'too_small') return `at least ${issue.minimum}`;
  if (issue.code === 'too_big') return `at most ${issue.maximum}`;
  if (issue.code === 'invalid_format' || issue.code === 'custom') return 'a civil date such as 2026-11-25';
  return 'another value';
}
