/** What a link or a pair of the basket did to the worksheet. */
import type { ComponentChildren } from 'preact';
import type { Entries, Field } from '../../configurator/fields.ts';
import type { LinkReading } from '../../configurator/keeping/link.ts';
import type { NotHad } from '../../configurator/keeping/offered.ts';
import { groupOf } from '../../configurator/keeping/parts.ts';
import type { Telling } from './telling.ts';

/** What a worksheet was opened with, for the shopper to be told. */
export type Arrival =
  | {
      readonly kind: 'link';
      readonly link: LinkReading;
      /** From another page of the shop: the other language, or another frame. */
      readonly carried: boolean;
      readonly notHad: readonly NotHad[];
    }
  | { readonly kind: 'pair'; readonly number: number; readonly notHad: readonly NotHad[] }
  | { readonly kind: 'gone' };

interface Props {
  readonly telling: Telling;
  readonly arrival: Arrival;
  /** Entries were kept on the device when the worksheet opened. */
  readonly wasKept: boolean;
  readonly filled: Entries;
  readonly close: () => void;
}

/** Names of what fields are about; the many of a prescription are one. */
const NAMES = {
  size: 'frame.size',
  colourway: 'frame.colourway',
  use: 'use.legend',
  design: 'option.design.legend',
  material: 'option.material.legend',
  tint: 'option.tint.legend',
  coating: 'option.coating.legend',
  blank: 'figure.blank',
  own: 'frame.legend',
  prescription: 'prescription.legend',
  measures: 'measures.legend',
  wearer: 'wearer.legend',
  terms: 'terms.legend',
} as const;

export function Opened({ telling, arrival, wasKept, filled, close }: Props) {
  const { say, t } = telling;
  const { kind } = arrival;
  return (
    <>
      <div role="status">
        <h2 id="sh-opened" class="ws-head">
          {headOf(telling, arrival)}
        </h2>
        {kind === 'gone' && <p>{say('opened.gone')}</p>}
        {kind === 'pair' && <p>{say('opened.basketText')}</p>}
        {kind === 'link' && <LinkTold telling={telling} link={arrival.link} carried={arrival.carried} />}
        {kind !== 'gone' && arrival.notHad.length > 0 && (
          <List head={say('opened.leftOut')}>
            {arrival.notHad.map(({ field, value }) => (
              <li key={field}>{say('opened.notHad', { field: t(NAMES[groupOf(field)]), value })}</li>
            ))}
          </List>
        )}
        {wasKept && Object.keys(filled).length > 0 && <p>{say('opened.kept')}</p>}
      </div>
      <button type="button" class="ws-button" onClick={close}>
        {say('opened.close')}
      </button>
    </>
  );
}

function headOf({ say }: Telling, arrival: Arrival): string {
  if (arrival.kind === 'pair') return say('opened.fromBasket', { number: arrival.number });
  return say(arrival.kind === 'link' && arrival.carried ? 'opened.carried' : 'opened.title');
}

interface LinkToldProps {
  readonly telling: Telling;
  readonly link: LinkReading;
  readonly carried: boolean;
}

function LinkTold({ telling: { say, t }, link, carried }: LinkToldProps) {
  if (!link.ok) return <p>{say(link.why === 'version' ? 'opened.version' : 'opened.longLink')}</p>;
  const filled = new Set((Object.keys(link.entries) as Field[]).map(groupOf));
  const groups = (Object.keys(NAMES) as (keyof typeof NAMES)[]).filter((group) => filled.has(group));
  const personal = carried ? 'opened.carriedAll' : 'opened.personal';
  const without = carried ? 'opened.carriedChoices' : 'opened.noPrescription';
  const names = groups.map((group) => t(NAMES[group])).join(', ');
  return (
    <>
      <p>{groups.length === 0 ? say('opened.nothing') : say('opened.filled', { fields: names })}</p>
      <p>{say(link.personal ? personal : without)}</p>
      {link.leftOut.length > 0 && (
        <List head={say('opened.leftOut')}>
          {link.leftOut.map(({ part, why }) => (
            <li key={part}>{say('opened.part', { part, why: say(`opened.${why}`) })}</li>
          ))}
          {link.more > 0 && <li>{say('opened.more', { count: link.more })}</li>}
        </List>
      )}
    </>
  );
}

function List({ head, children }: { readonly head: string; readonly children: ComponentChildren }) {
  return (
    <>
      <p>{head}</p>
      <ul class="ws-list">{children}</ul>
    </>
  );
}
