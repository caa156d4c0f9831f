/** Splits a Markdown file into its fields (YAML between two `---` lines) and its body. */
import type { ContentFault } from '../fault.ts';
import { faultIn, type SourceText } from './sourceText.ts';

/** Both parts, with where they begin in the file's text. */
export interface FrontMatter {
  readonly yaml: string;
  readonly yamlAt: number;
  readonly body: string;
  readonly bodyAt: number;
}

type Split =
  | { readonly ok: true; readonly parts: FrontMatter }
  | { readonly ok: false; readonly fault: ContentFault };

const OPENING = /^---[ \t]*(\n|$)/;
const CLOSING = /^---[ \t]*$/m;

/** The two parts of a file. Refused: a file that does not begin with `---`, or whose fields never end. */
export function splitFrontMatter(source: SourceText): Split {
  const opening = OPENING.exec(source.text);
  if (opening === null) {
    const end = source.text.indexOf('\n');
    const found = source.text.trim() === '' ? 'an empty file' : 'other text';
    return {
      ok: false,
      fault: faultIn(source, 0, end === -1 ? source.text.length : end, [], {
        code: 'no-front-matter',
        expected: 'a line --- first, then the fields, then another line ---',
        received: found,
        hint: 'Put --- in the first line and --- below the last field; the text for the page comes after that.',
      }),
    };
  }
  const yamlAt = opening[0].length;
  const rest = source.text.slice(yamlAt);
  const closing = CLOSING.exec(rest);
  if (closing === null) {
    return {
      ok: false,
      fault: faultIn(source, 0, 3, [], {
        code: 'open-front-matter',
        expected: 'a line --- below the last field',
        received: 'no other line of just ---',
        hint: 'Add a line --- (not indented) below the last field.',
      }),
    };
  }
  const bodyAt = yamlAt + closing.index + closing[0].length;
  return {
    ok: true,
    parts: { yaml: rest.slice(0, closing.index), yamlAt, body: source.text.slice(bodyAt), bodyAt },
  };
}
