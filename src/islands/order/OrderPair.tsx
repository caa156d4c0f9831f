/** One pair of the order: what it is, the prescription as read and on paper, who measured, what is to be confirmed. */
import { pagePath } from '../../configurator/keeping/pagePath.ts';
import { MEASURED_BY } from '../../configurator/order/draftOf.ts';
import { pairPart } from '../../configurator/order/openItems.ts';
import { cautionsOf, isMeasured, type OrderedPair } from '../../configurator/order/orderedPairs.ts';
import { cautionField, ofPair } from '../../configurator/order/typed.ts';
import { PairNamesTold } from '../keeping/PairNamesTold.tsx';
import { VerdictTold } from '../keeping/StandingTold.tsx';
import { useLater } from '../useLater.ts';
import { AsRead } from './AsRead.tsx';
import { Labelled, OrderField } from './OrderField.tsx';
import { idOf, useOrdering } from './ordering.ts';
import { PairPaper } from './PairPaper.tsx';
import { Tick } from './Tick.tsx';
import { Waits } from './Waits.tsx';

interface Props {
  readonly pair: OrderedPair;
  /** The first pair of the order; null: this is it. */
  readonly first: OrderedPair | null;
}

export function OrderPair({ pair, first }: Props) {
  const { shop, telling, o } = useOrdering();
  const { id, number, frame, standing, request } = pair;
  const place = idOf(pairPart(id));
  // A convenience alone: where it does not load, everything can be entered without it.
  const part = useLater(() => import('./FromFirst.tsx'), first !== null);
  const cautions = cautionsOf(telling.words, standing);
  return (
    <section class="or-part or-pair" aria-labelledby={place}>
      <h2 id={place} tabIndex={-1}>
        {o('pair', { number, model: standing.names.model || o('ownFrame') })}
      </h2>
      <div class="or-columns">
        <div class="or-made">
          <VerdictTold telling={telling} standing={standing.standing} />
          <PairNamesTold telling={telling} names={standing.names} notHad={standing.notHad} />
          <Waits standing={standing.standing} />
          <p>
            <a href={`${pagePath(shop, frame)}#pair-${id}`} aria-label={o('changeLabel', { number })}>
              {o('change')}
            </a>
          </p>
        </div>
        <AsRead request={request} />
      </div>
      <div class="or-fields">
        <OrderField name={ofPair(id, 'wearer')} label={o('wearer')} />
        {first !== null && part !== null && part !== 'failed' && (
          <part.FromFirst first={first} id={id} prescribed={request.prescription !== null} />
        )}
      </div>
      {request.prescription !== null && <PairPaper id={id} />}
      {isMeasured(request) && <Measuring id={id} />}
      {cautions.length === 0 ? (
        <p class="ws-note">{o('noCautions')}</p>
      ) : (
        <fieldset class="or-group">
          <legend class="or-legend ws-head">{o('cautions')}</legend>
          {cautions.map(({ rule, text }) => (
            <Tick key={rule} name={cautionField(id, rule)} text={text} />
          ))}
        </fieldset>
      )}
    </section>
  );
}

/** Who measured and how; what the wearer is used to. */
function Measuring({ id }: { readonly id: number }) {
  const { o } = useOrdering();
  return (
    <fieldset class="or-group">
      <legend class="or-legend ws-head">{o('measuring')}</legend>
      <div class="or-fields">
        <MeasuredBy id={id} />
        <OrderField name={ofPair(id, 'measuredNote')} label={o('measuredNote')} />
        <OrderField name={ofPair(id, 'baseCurve')} label={o('baseCurve')} note={o('baseCurveNote')} digits />
      </div>
    </fieldset>
  );
}

function MeasuredBy({ id }: { readonly id: number }) {
  const { stores, o } = useOrdering();
  const name = ofPair(id, 'measuredBy');
  return (
    <Labelled name={name} label={o('measuredBy')}>
      {(told) => (
        <select
          {...told}
          name={name}
          onChange={({ currentTarget }) => stores.form.enter(name, currentTarget.value)}
        >
          <option value="">{o('choose')}</option>
          {MEASURED_BY.map((who) => (
            <option key={who} value={who}>
              {o(`measured.${who}`)}
            </option>
          ))}
        </select>
      )}
    </Labelled>
  );
}
