/** A field of an order's inspection or papers: a label, what was typed, and what is wrong with it. */
import type { Draft } from './benchState.ts';

/** What is typed for an order, and how more is put down. */
export interface Entering {
  readonly draft: Draft;
  /** What stands in a field now; `draft` may be older where a part is drawn again by itself. */
  readonly typed: (field: string) => string;
  readonly enter: (field: string, text: string) => void;
}

interface Props extends Pick<Entering, 'typed' | 'enter'> {
  readonly field: string;
  readonly label: string;
  readonly wrong?: string | undefined;
  readonly type?: 'text' | 'date';
  readonly most?: number;
  readonly wide?: boolean;
}

/** The id of a field's element. */
export const idOf = (field: string): string => `wr-${field.replaceAll('.', '-')}`;

export function Entry({ typed, enter, field, label, wrong, type = 'text', most = 200, wide = false }: Props) {
  const id = idOf(field);
  return (
    <div class={wide ? 'ws-field wr-wide' : 'ws-field'}>
      <label for={id}>{label}</label>
      <input
        id={id}
        type={type}
        autocomplete="off"
        spellcheck={false}
        maxLength={most}
        value={typed(field)}
        aria-invalid={wrong !== undefined}
        aria-describedby={wrong === undefined ? undefined : `${id}-wrong`}
        onInput={({ currentTarget }) => enter(field, currentTarget.value)}
      />
      {wrong !== undefined && (
        <p id={`${id}-wrong`} class="ws-fault">
          {wrong}
        </p>
      )}
    </div>
  );
}
