/** What every drawing has round it: its title, the picture, a key to its marks, and its figures in words. */
import type { ComponentChildren } from 'preact';
import type { Eye } from '../../optics/types.ts';
import type { Tell } from './tell.ts';

/** One row of figures: a label, and a text for each eye; null where there is none. */
export interface FigureRow {
  readonly label: string;
  readonly right: string | null;
  readonly left: string | null;
}

interface Props {
  readonly uid: string;
  readonly title: string;
  /** One sentence on what is drawn. */
  readonly lead: string;
  readonly children: ComponentChildren;
  readonly notes?: readonly string[];
}

export function Figure({ uid, title, lead, children, notes = [] }: Props) {
  return (
    <figure class="dw-figure" aria-labelledby={`${uid}-title`}>
      <figcaption class="dw-caption">
        <strong id={`${uid}-title`}>{title}</strong> {lead}
      </figcaption>
      {children}
      {notes.map((note) => (
        <p key={note} class="dw-note">
          {note}
        </p>
      ))}
    </figure>
  );
}

/** Figures of both eyes; rows without any are left out. */
export function EyeTable(props: {
  readonly caption: string;
  readonly rows: readonly FigureRow[];
  readonly tell: Tell;
}) {
  const { caption, rows, tell } = props;
  const eyes: readonly Eye[] = ['right', 'left'];
  const told = rows.filter(({ right, left }) => right !== null || left !== null);
  if (told.length === 0) return null;
  return (
    <table class="dw-table">
      <caption class="ws-unseen">{caption}</caption>
      <thead>
        <tr>
          <td />
          {eyes.map((eye) => (
            <th key={eye} scope="col">
              {tell.eye(eye)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {told.map(({ label, right, left }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>{right ?? '\u2013'}</td>
            <td>{left ?? '\u2013'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A row from what each eye says. */
export const rowOf = <T,>(
  label: string,
  eyes: { readonly right: T; readonly left: T },
  tellOne: (one: T, eye: Eye) => string | null,
): FigureRow => ({ label, right: tellOne(eyes.right, 'right'), left: tellOne(eyes.left, 'left') });

/** The key: each mark beside its name, drawn as in the picture. */
export function Key({
  marks,
}: {
  readonly marks: readonly { readonly name: string; readonly mark: ComponentChildren }[];
}) {
  return (
    <ul class="dw-key">
      {marks.map(({ name, mark }) => (
        <li key={name}>
          <svg class="dw-sample" viewBox="-8 -4 16 8" aria-hidden="true">
            {mark}
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}
