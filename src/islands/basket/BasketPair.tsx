/** One pair of the basket: what it is, whether it can be made, what it costs, and what can be done with it. */
import type { PairStanding } from '../../configurator/basket/answerBasket.ts';
import type { BasketPair as Pair } from '../../configurator/basket/basket.ts';
import { linesOf } from '../../configurator/basket/linesOf.ts';
import { pagePath } from '../../configurator/keeping/pagePath.ts';
import type { PriceAnswer } from '../../quote/answer.ts';
import { PairNamesTold } from '../keeping/PairNamesTold.tsx';
import { StandingTold, VerdictTold } from '../keeping/StandingTold.tsx';
import type { Telling } from '../keeping/telling.ts';
import { LinesTable } from '../PriceLines.tsx';

interface Props {
  readonly telling: Telling;
  readonly pair: Pair;
  readonly number: number;
  /** null: the shop no longer has the frame. */
  readonly known: PairStanding | null;
  readonly price: PriceAnswer | null;
  readonly onCopy: () => void;
  readonly onRemove: () => void;
}

export function BasketPair({ telling, pair, number, known, price, onCopy, onRemove }: Props) {
  const { say } = telling;
  const heading = `bk-pair-${pair.id}`;
  const model = known?.names.model || say('basket.ownFrame');
  return (
    <article class="bk-pair" aria-labelledby={heading}>
      <h2 id={heading}>
        {known === null ? say('basket.gone', { number }) : say('basket.pair', { number, model })}
      </h2>
      {known === null ? (
        <p>{say('basket.goneText', { frame: pair.frame })}</p>
      ) : (
        <>
          <VerdictTold telling={telling} standing={known.standing} />
          <div class="bk-made">
            <PairNamesTold telling={telling} names={known.names} notHad={known.notHad} />
          </div>
          <div class="bk-found">
            <h3 class="ws-head">{say('basket.found')}</h3>
            <StandingTold telling={telling} standing={known.standing} />
          </div>
          {price !== null && <PairPrice telling={telling} price={price} at={known.at} />}
        </>
      )}
      <div class="sh-row">
        {known !== null && (
          <>
            <a
              class="ws-button"
              href={`${pagePath(telling.shop, pair.frame)}#pair-${pair.id}`}
              aria-label={say('basket.changeLabel', { number })}
            >
              {say('basket.change')}
            </a>
            <button
              type="button"
              class="ws-button"
              aria-label={say('basket.copyLabel', { number })}
              onClick={onCopy}
            >
              {say('basket.copy')}
            </button>
          </>
        )}
        <button
          type="button"
          class="ws-button"
          aria-label={say('basket.removeLabel', { number })}
          onClick={onRemove}
        >
          {say('basket.remove')}
        </button>
      </div>
    </article>
  );
}

interface PriceProps {
  readonly telling: Telling;
  readonly price: PriceAnswer;
  readonly at: number;
}

/** The lines that belong to this pair. */
function PairPrice({ telling: { say, figures }, price, at }: PriceProps) {
  const { lines, sumMinor } = linesOf(price, at);
  return (
    <LinesTable
      caption={say('basket.price')}
      lines={lines}
      totalLabel={say('basket.pairTotal')}
      total={figures.money(sumMinor)}
      money={figures.money}
    />
  );
}
