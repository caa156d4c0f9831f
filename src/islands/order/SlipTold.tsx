/** The slip of an order whose file has left the page: number, digest and both as a QR code, printed by itself. */
import { useEffect, useState } from 'preact/hooks';
import { loadSlip } from '../../configurator/order/orderParts.ts';
import { useStore } from '../useStore.ts';
import { dayText } from './dayText.ts';
import { useOrdering } from './ordering.ts';

type Code = readonly (readonly boolean[])[];

export function SlipTold() {
  const { stores, shop, parts, o } = useOrdering();
  const gone = useStore(stores.form.gone);
  const number = useStore(stores.form.number);
  const date = useStore(stores.basket.answered)?.answer.request?.date;
  const [code, setCode] = useState<Code | null>(null);
  const digest = gone?.digest ?? null;
  useEffect(() => {
    let wanted = true;
    setCode(null);
    if (digest !== null)
      loadSlip().then(
        ({ qrCode, slipText }) => wanted && setCode(qrCode(slipText({ number, digest }))),
        // Number and digest stand beside it in letters.
        reportError,
      );
    return () => {
      wanted = false;
    };
  }, [number, digest]);
  if (gone === null) return null;
  const facts = [
    [o('slipTo'), shop.name],
    [o('slipNumber'), parts.showNumber(number)],
    [o('slipDate'), dayText(shop.language, date)],
    [o('slipFile'), gone.file],
    [o('slipDigest'), gone.digest.replace(/(.{8})(?=.)/g, '$1 ')],
  ] as const;
  return (
    <section class="or-part or-slip" aria-labelledby="or-slip">
      <h2 id="or-slip">{o('slip')}</h2>
      <p class="ws-note">{o('slipText')}</p>
      <div class="or-slip-body">
        {code !== null && <Qr code={code} label={o('slipQr')} />}
        <dl class="or-facts">
          {facts.map(([name, text]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      </div>
      <button type="button" class="ws-button or-print" onClick={() => print()}>
        {o('slipPrint')}
      </button>
    </section>
  );
}

/** Dark on light whatever the page's colours: a reader expects it so. */
function Qr({ code, label }: { readonly code: Code; readonly label: string }) {
  const dark = code.flatMap((row, y) => row.flatMap((on, x) => (on ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg class="or-qr" viewBox={`0 0 ${code.length} ${code.length}`} role="img" aria-label={label}>
      <rect width={code.length} height={code.length} fill="#ffffff" />
      <path d={dark.join('')} fill="#000000" />
    </svg>
  );
}
