/** What is kept of a file that was read, so that every value in it can be pointed at. */
import type { Document } from 'yaml';
import type { ContentFault } from '../fault.ts';
import type { SourceText } from './sourceText.ts';

/** A file's fields before any schema. */
export interface Origin {
  readonly source: SourceText;
  /** Where the YAML begins in the text. */
  readonly yamlAt: number;
  readonly yaml: string;
  /** Null where the fields could not be read at all. */
  readonly document: Document | null;
  /** Plain values; undefined where the fields could not be read. */
  readonly raw: unknown;
  /** Markdown below the fields. */
  readonly body: string;
  readonly faults: readonly ContentFault[];
}

/** A file that a noun is made of. */
export interface Entry<T> {
  /** The file's name without its ending. */
  readonly id: string;
  readonly origin: Origin;
  /** Null where the schema refused it; the faults then say why. */
  readonly value: T | null;
  /** Of a file that was refused, the fields that are right by themselves. */
  readonly parts: Readonly<Record<string, unknown>>;
  readonly faults: readonly ContentFault[];
}
