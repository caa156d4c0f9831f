/** Up to three packages in columns, each figure with its best and worst in words and signs. */
import { useEffect, useState } from 'preact/hooks';
import { siteHref } from '../../catalogue/siteHref.ts';
import type { Comparison } from '../../configurator/basket/answerComparison.ts';
import { hold, look } from '../../configurator/keeping/holding.ts';
import { pagePath } from '../../configurator/keeping/pagePath.ts';
import { type HeldPair, holdPair, termsPart } from '../../configurator/keeping/parts.ts';
import { ASIDE, samePair } from '../../configurator/keeping/setAside.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { shelves } from '../deviceShelf.ts';
import { putOn } from './arrive.tsx';
import { CompareTable } from './CompareTable.tsx';
import { countHeld } from './held.ts';
import { openedPair } from './heldState.ts';
import type { PairsEngine } from './pairsEngine.ts';
import type { Telling } from './telling.ts';

interface Props {
  readonly sheet: Worksheet;
  readonly telling: Telling;
  readonly ask: PairsEngine['comparison'];
  readonly close: () => void;
}

export function Compare({ sheet, telling, ask, close }: Props) {
  const { say, shop } = telling;
  const [pairs, setPairs] = useState(() => look(shelves(), ASIDE).value ?? []);
  const [comparison, setComparison] = useState<Comparison | 'failed' | null>(null);
  const terms = termsPart(sheet.entries.get());
  const present = holdPair(sheet.frame.id, sheet.entries.get(), sheet.read.get().choices);
  useEffect(() => {
    if (pairs.length === 0) return undefined;
    let wanted = true;
    void ask({ pairs, terms, date: sheet.date }).then(
      (answer) => wanted && setComparison(answer ?? 'failed'),
    );
    return () => {
      wanted = false;
    };
  }, [pairs]);
  const takeAway = (at: number) => {
    const left = pairs.filter((_, index) => index !== at);
    hold(shelves(), ASIDE, left, look(shelves(), ASIDE).onDevice);
    countHeld();
    setComparison(null);
    setPairs(left);
  };
  const use = (pair: HeldPair, at: number) => {
    if (pair.frame !== sheet.frame.id)
      location.assign(siteHref(`${pagePath(shop, pair.frame)}#aside-${at + 1}`));
    else {
      putOn(sheet, pair, {});
      openedPair.set(null);
      close();
    }
  };
  const ready = comparison !== null && comparison !== 'failed' && comparison.packages.length === pairs.length;
  const date = new Intl.DateTimeFormat(shop.language, { dateStyle: 'long', timeZone: 'UTC' });
  return (
    <>
      <div class="sh-compare-head">
        <h2 id="sh-compare">{say('compare.title')}</h2>
        <p class="ws-note">{pairs.length === 0 ? say('compare.none') : say('compare.text')}</p>
      </div>
      {pairs.length > 0 && !ready && (
        <p role="status">{say(comparison === 'failed' ? 'compare.failed' : 'compare.working')}</p>
      )}
      {ready && comparison.differentEyes && <p class="sh-caution">{say('compare.differentEyes')}</p>}
      {ready && pairs.length > 0 && (
        <CompareTable
          telling={telling}
          packages={comparison.packages}
          present={pairs.map((pair) => samePair(pair, present))}
          onUse={(at) => {
            const pair = pairs[at];
            if (pair !== undefined) use(pair, at);
          }}
          onTakeAway={takeAway}
        />
      )}
      <p class="ws-note">
        {say('compare.shown', { shop: shop.name, date: date.format(new Date(`${sheet.date}T00:00:00Z`)) })}
      </p>
      <div class="sh-row">
        {pairs.length > 0 && (
          <button type="button" class="ws-button" onClick={() => window.print()}>
            {say('compare.print')}
          </button>
        )}
        <button type="button" class="ws-button" onClick={close}>
          {say('compare.close')}
        </button>
      </div>
    </>
  );
}
