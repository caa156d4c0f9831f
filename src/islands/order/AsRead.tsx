/** The prescription and the measurements as they were read, to be held against the paper. */
import type { BothEyes, EyeRequest, FitRequest, PairRequest, PrismRequest } from '../../quote/request.ts';
import { type Ordering, useOrdering } from './ordering.ts';

export function AsRead({ request: { prescription, fit } }: { readonly request: PairRequest }) {
  const ordering = useOrdering();
  const { o } = ordering;
  return (
    <div class="or-read">
      {prescription === null ? (
        <p>{o('noPrescription')}</p>
      ) : (
        <>
          <table class="or-powers">
            <caption>{o('readAs')}</caption>
            <thead>
              <tr>
                {(['eye', 'sphere', 'cylinder', 'axis', 'prism', 'add'] as const).map((name) => (
                  <th scope="col" key={name}>
                    {o(name)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {(['right', 'left'] as const).map((eye) => (
                <tr key={eye}>
                  <th scope="row">{o(eye)}</th>
                  <Eye eye={prescription[eye]} />
                </tr>
              ))}
            </tbody>
          </table>
          {typeof prescription.vertexDistance === 'number' && (
            <p>
              {o('vertexTested') + ordering.telling.t('colon') + mmOf(ordering)(prescription.vertexDistance)}
            </p>
          )}
          <p class="ws-note">{o('compare')}</p>
        </>
      )}
      <dl class="or-facts">
        {measures(ordering, fit ?? {}).map(({ name, text }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

/** A power as on a prescription: a sign and two decimals, no sign at zero. */
const powerText = ({ telling: { figures } }: Ordering, valueD: number): string =>
  `${valueD > 0 ? '+' : ''}${figures.fixed(valueD, 2)}`.replace('-', '\u2212');

function Eye({ eye }: { readonly eye: EyeRequest }) {
  const ordering = useOrdering();
  const { o } = ordering;
  const { sphere, cylinder, axis, add, prism, balance } = eye;
  const none = o('none');
  const power = (valueD: number) => powerText(ordering, valueD);
  if (balance === true) return <td colSpan={5}>{o('balance')}</td>;
  const hasCylinder = typeof cylinder === 'number' && cylinder !== 0;
  return (
    <>
      <td>{sphere === undefined ? none : power(sphere)}</td>
      <td>{hasCylinder ? power(cylinder) : none}</td>
      <td>{hasCylinder && typeof axis === 'number' ? `${axis}°` : none}</td>
      <td>
        {prism?.length ? prism.map((one) => <span key={one.base}>{prismText(ordering, one)}</span>) : none}
      </td>
      <td>{typeof add === 'number' ? power(add) : none}</td>
    </>
  );
}

function prismText({ o, telling: { figures } }: Ordering, { amount, base }: PrismRequest): string {
  const told = figures.prism(amount);
  return typeof base === 'number'
    ? o('prismAt', { amount: told, deg: base })
    : o('prismOf', { amount: told, base: o(`base.${base}`) });
}

/** Millimetres as they are measured, to 0.1. */
const mmOf =
  ({ telling: { figures, t } }: Ordering) =>
  (value: number) =>
    `${figures.fixed(value, 1)}\u00a0${t('unit.mm')}`;

function measures(ordering: Ordering, fit: FitRequest) {
  const { o } = ordering;
  const mm = mmOf(ordering);
  const both = (value: number | BothEyes) =>
    typeof value === 'number' ? mm(value) : o('each', { right: mm(value.right), left: mm(value.left) });
  const found = (['pd', 'nearPd', 'fittingHeight', 'segmentHeight'] as const).flatMap((name) => {
    const value = fit[name];
    return value === undefined ? [] : [{ name: o(name), text: both(value) }];
  });
  const worn = [
    fit.vertexDistance !== undefined && o('vertexDistance', { mm: mm(fit.vertexDistance) }),
    fit.pantoscopicTilt !== undefined && o('pantoscopicTilt', { deg: fit.pantoscopicTilt }),
    fit.faceForm !== undefined && o('faceForm', { deg: fit.faceForm }),
  ].filter((one) => one !== false);
  if (worn.length > 0) found.push({ name: o('worn'), text: worn.join(', ') });
  return found.length > 0 ? found : [{ name: o('measures'), text: o('noMeasures') }];
}
