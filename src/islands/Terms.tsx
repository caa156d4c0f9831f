/** Where the pair goes, an exemption from tax, and codes. */
import { useEffect, useState } from 'preact/hooks';
import type { Shop } from '../catalogue/shop.ts';
import { countryNames, type Destination, namedDestinations } from '../configurator/destinations.ts';
import type { PriceAnswer } from '../quote/answer.ts';
import { Field, Message } from './Field.tsx';
import { idOf, useEntry, useEntryStores, useFault, useSheet } from './sheet.ts';
import { useStore } from './useStore.ts';

/** The terms of a worksheet. */
export function Terms() {
  const { t, data, answer } = useSheet();
  return (
    <section class="ws-part" aria-labelledby="ws-terms">
      <h3 id="ws-terms">{t('terms.legend')}</h3>
      <TermsFields shop={data.shop} codes={useStore(answer).price.codes} />
    </section>
  );
}

/** What the fields offer. */
type TermsShop = Pick<Shop, 'destination' | 'places' | 'shipping' | 'exemptions' | 'language'>;

interface Props {
  readonly shop: TermsShop;
  /** What became of the codes that were typed. */
  readonly codes: PriceAnswer['codes'];
}

/** The fields by themselves, for whatever entries they stand among. */
export function TermsFields({ shop, codes }: Props) {
  const { t, enter, leave } = useEntryStores();
  const destination = useEntry('destination') || shop.destination;
  const exemption = useEntry('exemption');
  const fault = useFault('exemption');
  const nameOf = countryNames(shop.language);
  // Two hundred countries are left out of the page and added in the browser.
  const [others, setOthers] = useState<readonly Destination[]>([]);
  useEffect(() => {
    import('../configurator/otherDestinations.ts').then(
      ({ otherDestinations }) => setOthers(otherDestinations(shop, nameOf, shop.language)),
      // The places that the shop names are there all the same.
      (error) => console.error(error),
    );
  }, []);
  const options = (all: readonly Destination[]) =>
    all.map(({ code, name }) => (
      <option key={code} value={code}>
        {name}
      </option>
    ));
  return (
    <>
      <div class="ws-line">
        <div class="ws-field ws-wide">
          <label for={idOf('destination')}>{t('terms.destination')}</label>
          <select
            id={idOf('destination')}
            name="destination"
            value={destination}
            onChange={({ currentTarget }) => enter('destination', currentTarget.value)}
          >
            {options(namedDestinations(shop, nameOf))}
            {others.length > 0 && <optgroup label={t('terms.elsewhere')}>{options(others)}</optgroup>}
          </select>
        </div>
        {shop.exemptions.length > 0 && (
          <div class="ws-field ws-wide">
            <label for={idOf('exemption')}>{t('terms.exemption')}</label>
            <select
              id={idOf('exemption')}
              name="exemption"
              value={exemption}
              onChange={({ currentTarget }) => {
                enter('exemption', currentTarget.value);
                leave('exemption');
              }}
              aria-invalid={fault ? 'true' : undefined}
              aria-describedby={`${idOf('exemption')}-told`}
            >
              <option value="">{t('terms.noExemption')}</option>
              {shop.exemptions.map(({ id, label }) => (
                <option key={id} value={id}>
                  {label}
                </option>
              ))}
            </select>
          </div>
        )}
        <Field name="codes" label={t('terms.codes')} />
      </div>
      <Message name="exemption" />
      <div id={`${idOf('codes')}-told`}>
        {codes.map(({ code, used, message }) => (
          <p class="ws-told" key={code}>
            <strong>{code}</strong>{' '}
            {t(used ? 'ticket.codeUsed' : 'ticket.codeNotUsed') + t('colon') + message}
          </p>
        ))}
      </div>
    </>
  );
}
