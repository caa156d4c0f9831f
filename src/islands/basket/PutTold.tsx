/** What is told once a pair is in the basket: where it is, how long it stays, and the tick that keeps it. */
import { useState } from 'preact/hooks';
import { pageHref } from '../../catalogue/languages.ts';
import { BASKET } from '../../configurator/basket/basket.ts';
import { hold, look } from '../../configurator/keeping/holding.ts';
import { shelves } from '../deviceShelf.ts';
import type { Telling } from '../keeping/telling.ts';

interface Props {
  readonly telling: Telling;
  readonly first: string;
}

export function PutTold({ telling: { say, shop }, first }: Props) {
  const { value, onDevice } = look(shelves(), BASKET);
  const [kept, setKept] = useState(onDevice);
  const [refused, setRefused] = useState(false);
  const keep = (on: boolean) => {
    // Read again: another tab may have changed what is on the device.
    const now = look(shelves(), BASKET).value;
    const done = now !== null && hold(shelves(), BASKET, now, on);
    setKept(done ? on : kept);
    setRefused(!done);
  };
  return (
    <>
      <p>
        {first} {say('basket.inBasket', { count: value?.pairs.length ?? 0 })}{' '}
        <a href={pageHref(shop, '/basket/')}>{say('basket.go')}</a>
      </p>
      <div class="ws-tick">
        <input
          type="checkbox"
          id="sh-keep"
          checked={kept}
          onChange={({ currentTarget }) => keep(currentTarget.checked)}
          aria-describedby="sh-keep-text"
        />
        <label for="sh-keep">{say('basket.keep')}</label>
      </div>
      <p class="ws-note" id="sh-keep-text">
        {refused ? say('basket.refused') : say('basket.keepText')}
      </p>
    </>
  );
}
