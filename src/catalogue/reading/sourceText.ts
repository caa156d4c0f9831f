/** A content file as text: bytes in, text or the fault that says why there is none. */
import type { ContentFault, FaultDetail, FieldPath } from '../fault.ts';

/** A file as it was found. */
export interface SourceFile {
  /** Path from the project's folder, with forward slashes, such as `content/frames/dunlin.md`. */
  readonly path: string;
  readonly bytes: Uint8Array;
  /** Of the whole file, where `bytes` is only its beginning. */
  readonly sizeBytes?: number;
}

/** A file's text with LF line ends and without a byte-order mark. */
export interface SourceText {
  readonly path: string;
  readonly text: string;
}

/** More is refused: the largest sensible file, a traced outline, has some 20 kB. */
export const MOST_BYTES = 512 * 1024;

/** A fault at `[start, end)` of the text; the marked stretch ends with its line. */
export function faultIn(
  source: SourceText,
  start: number,
  end: number,
  path: FieldPath,
  detail: FaultDetail,
): ContentFault {
  const offset = Math.max(0, Math.min(start, source.text.length));
  const lineStart = source.text.lastIndexOf('\n', offset - 1) + 1;
  const next = source.text.indexOf('\n', offset);
  const lineEnd = next === -1 ? source.text.length : next;
  let line = 1;
  for (let at = source.text.indexOf('\n'); at !== -1 && at < offset; at = source.text.indexOf('\n', at + 1))
    line += 1;
  return {
    ...detail,
    file: source.path,
    line,
    column: offset - lineStart + 1,
    length: Math.max(1, Math.min(end, lineEnd) - offset),
    sourceLine: source.text.slice(lineStart, lineEnd),
    path,
  };
}

/** A fault of the file as a whole. */
export function faultOfFile(file: string, detail: FaultDetail): ContentFault {
  return { ...detail, file, line: 1, column: 1, length: 1, sourceLine: '', path: [] };
}

function refuse(path: string, code: FaultDetail['code'], received: string, hint: string) {
  return { ok: false, fault: faultOfFile(path, { code, expected: EXPECTED, received, hint }) } as const;
}

const EXPECTED = 'a text file in UTF-8 of at most 512 kB';

type Decoded =
  | { readonly ok: true; readonly source: SourceText }
  | { readonly ok: false; readonly fault: ContentFault };

/** The text of a file. Refused: more than MOST_BYTES, control characters, anything that is not UTF-8. */
export function decodeSource({ path, bytes }: SourceFile): Decoded {
  if (bytes.length > MOST_BYTES) {
    return refuse(
      path,
      'too-large',
      `more than ${MOST_BYTES / 1024} kB`,
      'Split the file, or move what is not content out of the folder.',
    );
  }
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    return refuse(path, 'not-utf8', 'a text in UTF-16', 'Save the file again with the encoding UTF-8.');
  }
  const text = new TextDecoder('utf-8').decode(bytes).replace(/\r\n?/g, '\n');
  const source = { path, text };
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what a text file cannot hold.
  const control = text.search(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/);
  if (control !== -1) {
    const code = text.charCodeAt(control).toString(16).padStart(2, '0');
    const hint = 'Move the file out of the folder if it is not text, or remove the character.';
    return {
      ok: false,
      fault: faultIn(source, control, control + 1, [], {
        code: 'not-text',
        expected: EXPECTED,
        received: `the control character 0x${code}`,
        hint,
      }),
    };
  }
  return isUtf8(bytes) ? { ok: true, source } : { ok: false, fault: notUtf8(source) };
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function notUtf8(source: SourceText): ContentFault {
  const at = source.text.indexOf('\ufffd');
  return faultIn(source, at, at + 1, [], {
    code: 'not-utf8',
    expected: EXPECTED,
    received: 'a byte that is no UTF-8 character',
    hint: 'Save the file again with the encoding UTF-8.',
  });
}
