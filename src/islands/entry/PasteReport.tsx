/** What was read of a pasted prescription, what it replaced, and the text with its marks. */
import type { Replaced } from '../../configurator/entry/applyPaste.ts';
import type { Paste, PasteMark } from '../../configurator/entry/readPaste.ts';
import { fieldName } from '../../configurator/fieldName.ts';
import { EYES, type Field } from '../../configurator/fields.ts';
import { writeEye } from '../../optics/notation/write.ts';
import { useEntryStores } from '../sheet.ts';

interface Props {
  readonly text: string;
  readonly pasted: Paste;
  readonly replaced: readonly Replaced[];
}

const BESIDE_EYES: readonly Field[] = [
  'pd.right',
  'pd.both',
  'nearPd.right',
  'nearPd.both',
  'vertexTested',
  'issued',
];

export function PasteReport({ text, pasted, replaced }: Props) {
  const { t } = useEntryStores();
  const { kind, eyes, entries, marks } = pasted;
  const name = (field: Field) => fieldName(t, field);
  const read = [
    ...EYES.flatMap((eye) => {
      const written = eyes[eye];
      return written === null
        ? []
        : [t('entry.paste.eye', { eye: t(eye), power: writeEye(written).replaceAll('-', '\u2212') })];
    }),
    ...BESIDE_EYES.filter((field) => entries[field]).map((field) => `${name(field)} ${entries[field]}`),
  ];
  const over = replaced.filter(
    ({ field, before, now }) => before !== '' && now !== '' && field !== 'pd.mode',
  );
  const removed = replaced.filter(({ before, now }) => before !== '' && now === '');
  const absent = kind === 'read' && read.length > 0 ? EYES.filter((eye) => eyes[eye] === null) : [];
  const faulty = marks.some((mark) => mark.kind === 'fault' || mark.kind === 'mixed');
  return (
    <div class="en-report">
      {kind === 'contact-lens' ? (
        <p class="ws-told ws-fault">{t('entry.paste.contact')}</p>
      ) : (
        <p>
          {read.length === 0 ? t('entry.paste.nothing') : t('entry.paste.done', { what: read.join('; ') })}
        </p>
      )}
      {over.length > 0 && (
        <p>
          {t('entry.paste.replaced', {
            what: over.map(({ field, before }) => `${name(field)} ${before}`).join('; '),
          })}
        </p>
      )}
      {removed.length > 0 && (
        <p>
          {t('entry.paste.removed', {
            what: removed.map(({ field, before }) => `${name(field)} ${before}`).join('; '),
          })}
        </p>
      )}
      {absent.map((eye) => (
        <p key={eye}>{t(`entry.paste.${faulty ? 'open' : 'absent'}-eye`, { eye: t(eye) })}</p>
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

function markText(
  t: (key: string, slots?: Readonly<Record<string, string>>) => string,
  text: string,
  { start, end, kind, expected }: PasteMark,
): string | null {
  if (kind === 'contact-lens') return null;
  const found = text.slice(start, end).trim();
  if (kind !== 'fault') return t(`entry.paste.${kind}`, { found });
  const before = text.slice(0, start).trimEnd().split(/\s+/).slice(-2).join(' ');
  return found === ''
    ? t('entry.paste.fault-end', { found: before, expected: expected ?? '' })
    : t('entry.paste.fault', { found, expected: expected ?? '' });
}
