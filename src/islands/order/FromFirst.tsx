/** Fills in what the first pair says of person, paper and measuring, where nothing is entered yet. */
import { useState } from 'preact/hooks';
import type { OrderedPair } from '../../configurator/order/orderedPairs.ts';
import { ofPair, textIn } from '../../configurator/order/typed.ts';
import { useOrdering } from './ordering.ts';

const OF_ANYBODY = ['wearer', 'measuredBy', 'measuredNote'] as const;
const OF_A_PAPER = ['prescriber', 'place', 'written', 'baseCurve'] as const;

interface Props {
  readonly first: OrderedPair;
  readonly id: number;
  readonly prescribed: boolean;
}

export function FromFirst({ first, id, prescribed }: Props) {
  const { stores, o } = useOrdering();
  const [told, tell] = useState('');
  const { form, basket } = stores;
  const fill = () => {
    for (const field of prescribed ? [...OF_ANYBODY, ...OF_A_PAPER] : OF_ANYBODY) {
      const text = textIn(form.typed.get(), ofPair(first.id, field));
      if (textIn(form.typed.get(), ofPair(id, field)) === '' && text !== '')
        form.enter(ofPair(id, field), text);
    }
    const issuedOf = (pair: number) =>
      basket.basket.get().pairs.find((one) => one.id === pair)?.entries.issued ?? '';
    if (prescribed && issuedOf(id) === '' && issuedOf(first.id) !== '')
      basket.enter(id, 'issued', issuedOf(first.id));
    tell(o('fromFirstTold', { number: first.number }));
  };
  return (
    <div class="or-from">
      <button type="button" class="ws-button" onClick={fill}>
        {o('fromFirst', { number: first.number })}
      </button>
      <p class="ws-told" role="status">
        {told}
      </p>
    </div>
  );
}
