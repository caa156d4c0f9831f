/** One content file read with its schema: the value, and for every path in it the place to point at. */
import type { Document } from 'yaml';
import type { ContentFault, FaultDetail, FieldPath } from '../fault.ts';
import { nearest } from '../nearest.ts';
import { parseParts, parseWith, type Schema, type SchemaIssue } from '../schema/parse.ts';
import { splitFrontMatter } from './frontMatter.ts';
import { explainIssue } from './issueFault.ts';
import { locate, sourceAt } from './locate.ts';
import type { Entry, Origin } from './origin.ts';
import { faultIn, type SourceText } from './sourceText.ts';
import { parseYaml, readYaml } from './yamlValue.ts';

/** The fault at `path` of a file, at its value or its key. */
export function faultAt(origin: Origin, path: FieldPath, detail: FaultDetail, at: 'value' | 'key' = 'value') {
  const [start, end] = origin.document === null ? [0, 1] : locate(origin.document, path, at);
  return faultIn(origin.source, origin.yamlAt + start, origin.yamlAt + end, path, detail);
}

/** Reads the fields of a file: the whole of a `.yaml`, the front matter of a `.md`. Never throws. */
export function readOrigin(source: SourceText): Origin {
  if (!source.path.endsWith('.md')) return yamlOrigin(source, source.text, 0, '');
  const split = splitFrontMatter(source);
  if (split.ok) return yamlOrigin(source, split.parts.yaml, split.parts.yamlAt, split.parts.body);
  return { source, yamlAt: 0, yaml: '', document: null, raw: undefined, body: '', faults: [split.fault] };
}

function yamlOrigin(source: SourceText, yaml: string, yamlAt: number, body: string): Origin {
  const { value, faults } = readYaml(yaml);
  let document: Document | null = null;
  return {
    source,
    yamlAt,
    yaml,
    // Nodes take far more room than what they say, and only faults ask for them: they are made again then.
    get document() {
      document ??= parseYaml(yaml);
      return document;
    },
    raw: value,
    body,
    faults: faults.map(({ start, end, detail }) => faultIn(source, yamlAt + start, yamlAt + end, [], detail)),
  };
}

/** Holds a file against its schema. Where its YAML is broken the schema says nothing. */
export function readEntry<T>(id: string, origin: Origin, schema: Schema<T>): Entry<T> {
  if (origin.raw === undefined) return { id, origin, value: null, parts: {}, faults: origin.faults };
  // A file of comments alone has no fields; each of them is then missing by name.
  const raw = origin.raw ?? {};
  const parsed = parseWith(schema, raw);
  if (parsed.ok && origin.faults.length === 0)
    return { id, origin, value: parsed.value, parts: {}, faults: origin.faults };
  const refused = { id, origin, value: null, parts: parseParts(schema, raw) };
  if (parsed.ok) return { ...refused, faults: origin.faults };
  return {
    ...refused,
    faults: [...origin.faults, ...worthTelling(parsed.issues).map((issue) => place(origin, issue))],
  };
}

/** A misspelt field is also missing under its right name: one fault is enough. */
function worthTelling(issues: readonly SchemaIssue[]): readonly SchemaIssue[] {
  const meant = new Set<string>();
  for (const { kind, path, choices = [] } of issues) {
    const name = kind === 'unknown-key' ? nearest(String(path.at(-1)), choices) : null;
    if (name !== null) meant.add([...path.slice(0, -1), name].join('\0'));
  }
  return issues.filter(({ kind, path }) => kind !== 'missing' || !meant.has(path.join('\0')));
}

function place(origin: Origin, issue: SchemaIssue): ContentFault {
  const source = origin.document === null ? null : sourceAt(origin.document, origin.yaml, issue.path);
  const detail = explainIssue(issue, origin.raw ?? {}, source);
  return faultAt(origin, issue.path, detail, issue.kind === 'unknown-key' ? 'key' : 'value');
}
