/** What was read of a pasted prescription, what it replaced, and the text with its marks. */
import type { Replaced } from '../../configurator/entry/applyPaste.ts';
import type { Paste, PasteMark } from '../../configurator/entry/readPaste.ts';
import { fieldName } from '../../configurator/fieldName.ts';
import { EYES, type Field } from '../../configurator/fields.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { writeEye } from '../../optics/notation/write.ts';
import { type EntryStores, useEntryStores } from '../sheet.ts';

interface Props {
  readonly text: string;
  readonly pasted: Paste;
  readonly replaced: readonly Replaced[];
}

const BESIDE_EYES = [
  { named: 'pd.both', fields: ['pd.both', 'pd.right', 'pd.left'] },
  { named: 'nearPd.both', fields: ['nearPd.both', 'nearPd.right', 'nearPd.left'] },
  { named: 'vertexTested', fields: ['vertexTested'] },
  { named: 'issued', fields: ['issued'] },
] as const satisfies readonly { named: Field; fields: readonly Field[] }[];

/** What was read: `Right −2.00 DS`, `PD 31.5 / 32`. */
function readTexts(
  { t, digits }: Pick<EntryStores, 't' | 'digits'>,
  { eyes, entries }: Paste,
): readonly string[] {
  const ofEyes = EYES.flatMap((eye) => {
    const written = eyes[eye];
    if (written === null) return [];
    return [
      t('entry.paste.eye', { eye: t(eye), power: digits(writeEye(written).replaceAll('-', '\u2212')) }),
    ];
  });
  const beside = BESIDE_EYES.flatMap(({ named, fields }) => {
    const texts = fields.map((field) => entries[field] ?? '').filter((text) => text !== '');
    return texts.length === 0 ? [] : [`${fieldName(t, named)} ${texts.join(' / ')}`];
  });
  return [...ofEyes, ...beside];
}

export function PasteReport({ text, pasted, replaced }: Props) {
  const stores = useEntryStores();
  const { t } = stores;
  const { kind, eyes, unread, marks } = pasted;
  const told = ({ field, before }: Replaced) => `${fieldName(t, field)} ${before}`;
  const read = readTexts(stores, pasted);
  const over = replaced.filter(
    ({ field, before, now }) => before !== '' && now !== '' && field !== 'pd.mode',
  );
  const removed = replaced.filter(({ before, now }) => before !== '' && now === '');
  const absent = read.length === 0 ? [] : EYES.filter((eye) => eyes[eye] === null && !unread.includes(eye));
  return (
    <div class="en-report">
      {kind === 'contact-lens' ? (
        <p class="ws-told ws-fault">{t('entry.paste.contact')}</p>
      ) : (
        <p>
          {read.length === 0
            ? t('entry.paste.nothing')
            : t('entry.paste.done', { what: read.join(t('semicolon')) })}
        </p>
      )}
      {over.length > 0 && (
        <p>
          {t('entry.paste.replaced', {
            what: over.map(told).join(t('semicolon')),
          })}
        </p>
      )}
      {removed.length > 0 && (
        <p>
          {t('entry.paste.removed', {
            what: removed.map(told).join(t('semicolon')),
          })}
        </p>
      )}
      {unread.map((eye) => (
        <p key={eye}>{t('entry.paste.open-eye', { eye: t(eye) })}</p>
      ))}
      {absent.map((eye) => (
        <p key={eye}>{t('entry.paste.absent-eye', { eye: t(eye) })}</p>
      ))}
      {marks.length > 0 && (
        <>
          <p class="ws-told-field">{t('entry.paste.text')}</p>
          <p class="en-marked">
            <Marked text={text} marks={marks} />
          </p>
          <ul class="en-faults">
            {marks.flatMap((mark) => {
              const told = markText(t, text, mark);
              return told === null ? [] : [<li key={mark.start}>{told}</li>];
            })}
          </ul>
        </>
      )}
    </div>
  );
}

/** The text in pieces, the marked ones as such; a gap where something is missing. */
function Marked({ text, marks }: { readonly text: string; readonly marks: readonly PasteMark[] }) {
  const ends = [0, ...marks.map(({ end }) => end)];
  return (
    <>
      {marks.map(({ start, end, kind }, at) => (
        <>
          {text.slice(ends[at], start)}
          <mark key={start} class={`en-${kind}`}>
            {text.slice(start, end) || '\u2003'}
          </mark>
        </>
      ))}
      {text.slice(ends.at(-1))}
    </>
  );
}

function markText(t: Worksheet['t'], text: string, { start, end, kind, expected }: PasteMark): string | null {
  if (kind === 'contact-lens') return null;
  const found = text.slice(start, end).trim();
  if (kind !== 'fault') return t(`entry.paste.${kind}`, { found });
  const before = text.slice(0, start).trimEnd().split(/\s+/).slice(-2).join(' ');
  const wanted = expected === null ? '' : t(`entry.paste.wanted.${expected.code}`, expected.figures);
  return found === ''
    ? t('entry.paste.fault-end', { found: before, expected: wanted })
    : t('entry.paste.fault', { found, expected: wanted });
}
