/** What a pair is made of, in the shop's names; what of it is no longer had. */
import type { PairNames } from '../../configurator/basket/readPair.ts';
import type { NotHad } from '../../configurator/keeping/offered.ts';
import type { Telling } from './telling.ts';

interface Props {
  readonly telling: Telling;
  readonly names: PairNames;
  readonly notHad: readonly NotHad[];
}

export function PairNamesTold({ telling: { say, t }, names, notHad }: Props) {
  const { size, colourway, wearer, use, lenses } = names;
  const frame = [size, colourway].filter((one) => one !== '');
  return (
    <>
      {frame.length > 0 && <p>{frame.join(', ')}</p>}
      <p>
        {t(`use.${use}`)}
        {wearer !== 'adult' && t('semicolon') + say('basket.for', { wearer: say(`basket.${wearer}`) })}
      </p>
      <ul class="sh-lines">
        {lenses.map((name) => (
          <li key={name}>{name}</li>
        ))}
      </ul>
      {notHad.length > 0 && (
        <p class="sh-caution">
          {say('basket.notHad', { what: notHad.map(({ value }) => value).join(', ') })}
        </p>
      )}
    </>
  );
}
