/** The order looked at again: the checklist, every difference from what the buyer saw, and what to ask. */
import { callTexts, differenceTexts, heldKey } from '../../workroom/papers/checkWords.ts';
import type { Verification } from '../../workroom/verify.ts';
import { useBench } from './useBench.ts';

interface Props {
  readonly checked: Verification;
  readonly buyer: { readonly phone: string; readonly email: string };
}

export function Verify({ checked, buyer }: Props) {
  const { t, w } = useBench();
  const differences = differenceTexts(w, checked);
  const calls = callTexts(w, checked);
  const reached = [buyer.phone, buyer.email].filter((one) => one !== '').join(', ');
  return (
    <section class="wr-part" aria-labelledby="wr-verify">
      <h3 id="wr-verify" class="ws-head">
        {w('verify.title')}
      </h3>
      <p class="ws-note">{t('verify.says')}</p>
      <dl class="wr-checks">
        {checked.checks.map(({ item, holds }) => (
          <div key={item} data-holds={heldKey(holds)}>
            <dt>{w(`verify.${item}`)}</dt>
            <dd>{w(`verify.${heldKey(holds)}`)}</dd>
          </div>
        ))}
      </dl>
      <Prices checked={checked} />
      <h4>{w('verify.differences')}</h4>
      <Sentences all={differences} none={w('verify.sameFindings')} />
      <h4>{w('verify.calls')}</h4>
      {calls.length > 0 && <p>{w('verify.callAt', { to: reached || '–' })}</p>}
      <Sentences all={calls} none={w('verify.noCalls')} />
    </section>
  );
}

function Sentences({ all, none }: { readonly all: readonly string[]; readonly none: string }) {
  if (all.length === 0) return <p>{none}</p>;
  return (
    <ul class="wr-sentences">
      {all.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
}

function Prices({ checked: { prices, shownTotalMinor, nowTotalMinor } }: Pick<Props, 'checked'>) {
  const { w, money } = useBench();
  const amount = (minor: number | null) => (minor === null ? '–' : money(minor));
  return (
    <table class="figures wr-prices">
      <caption>{w('verify.prices')}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">{w('verify.shown')}</th>
          <th scope="col">{w('verify.now')}</th>
        </tr>
      </thead>
      <tbody>
        {prices.map(({ label, shownMinor, nowMinor }, at) => (
          <tr key={at}>
            <th scope="row">{label}</th>
            <td>{amount(shownMinor)}</td>
            <td>{amount(nowMinor)}</td>
          </tr>
        ))}
        {prices.length === 0 && (
          <tr>
            <td colSpan={3}>{w('verify.samePrice')}</td>
          </tr>
        )}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{w('verify.total')}</th>
          <td>{amount(shownTotalMinor)}</td>
          <td>{amount(nowTotalMinor)}</td>
        </tr>
      </tfoot>
    </table>
  );
}
