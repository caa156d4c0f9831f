/** Nouns with the texts of their translation's files, and every place where a file lags behind. */
import type { ContentFault, FaultCode } from '../fault.ts';
import { faultAt } from '../reading/entry.ts';
import { FOLDERS } from '../reading/folders.ts';
import { renderMarkdown } from '../reading/markdown.ts';
import type { Origin } from '../reading/origin.ts';
import { faultIn, faultOfFile } from '../reading/sourceText.ts';
import type { Translation } from './files.ts';
import { TEXTS, type TranslatedKind } from './texts.ts';
import { type Lag, translate } from './translate.ts';

/** From which language into which, and what the content folder is called. */
export interface Speech {
  readonly root: string;
  readonly from: string;
  readonly into: string;
  /** First part of the addresses of `into`. */
  readonly segment: string;
  readonly translations: readonly Translation[];
  readonly faults: ContentFault[];
}

const CODES: Readonly<Record<Lag['kind'], FaultCode>> = {
  missing: 'not-translated',
  'left-over': 'translation-left-over',
  'other-count': 'translation-left-over',
  'other-slots': 'other-slots',
};

const HINTS: Readonly<Record<Lag['kind'], string>> = {
  missing: 'Add the text; until then the shop shows the one of its first language.',
  'left-over': 'Remove it, or correct its name.',
  'other-count': 'Write one text for each, in the same order.',
  'other-slots': 'Use each slot in braces, spelt as there.',
};

/** The nouns of a kind; `html` is the field that the text below a file's fields becomes. */
export function translateNouns<T extends object>(
  speech: Speech,
  of: TranslatedKind,
  nouns: readonly T[],
  idOf: (noun: T) => string,
  html: keyof T | null,
): readonly T[] {
  return nouns.map((noun) => {
    const id = idOf(noun);
    const found = speech.translations.find((one) => one.of === of && one.entry.id === id);
    if (found === undefined) {
      speech.faults.push(absent(speech, of, id));
      return html === null ? noun : { ...noun, [html]: foreign(speech, String(noun[html])) };
    }
    const { origin, value: given } = found.entry;
    const { value, lags } = translate(TEXTS[of], noun, given ?? {});
    for (const lag of lags) speech.faults.push(lagFault(origin, lag));
    if (html === null) return value;
    const own = String(noun[html]);
    if (own !== '' && origin.body.trim() === '') speech.faults.push(noBody(origin));
    const told = withinLanguage(speech, renderMarkdown(origin.body)) || foreign(speech, own);
    return { ...value, [html]: own === '' ? '' : told };
  });
}

/** A text that is not translated says so to readers aloud and to translators. */
const foreign = (speech: Speech, html: string): string =>
  html === '' ? '' : `<div class="prose" lang="${speech.from}">${withinLanguage(speech, html)}</div>`;

/** Links to pages of the shop lead to those of the language; files, which have an ending, are there once. */
const withinLanguage = ({ segment }: Speech, html: string): string =>
  html.replace(/ href="(\/(?!\/)[^".]*)"/g, ` href="/${segment}$1"`);

/** The file that translates a noun. */
export function translationPath(
  { root, into }: Pick<Speech, 'root' | 'into'>,
  of: TranslatedKind,
  id: string,
) {
  const place = of === 'shop' ? 'shop.yaml' : `${FOLDERS[of].folder}/${id}${FOLDERS[of].ending}`;
  return { file: `${root}/translations/${into}/${place}`, own: `${root}/${place}` };
}

function absent(speech: Speech, of: TranslatedKind, id: string): ContentFault {
  const { file, own } = translationPath(speech, of, id);
  return faultOfFile(file, {
    code: 'not-translated',
    expected: `the texts of ${own} in ${speech.into}`,
    received: 'no file',
    hint: `Add the file with its texts alone; until then the shop shows those in ${speech.from}.`,
  });
}

function lagFault(origin: Origin, { kind, path, expected, received }: Lag): ContentFault {
  const detail = { code: CODES[kind], expected, received, hint: HINTS[kind] };
  return faultAt(origin, path, detail, kind === 'left-over' ? 'key' : 'value');
}

function noBody({ source }: Origin): ContentFault {
  const end = source.text.trimEnd().length;
  return faultIn(source, Math.max(0, end - 3), end, [], {
    code: 'not-translated',
    expected: 'the text below the fields',
    received: 'nothing',
    hint: HINTS.missing,
  });
}
