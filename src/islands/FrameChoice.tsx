/** Size and colourway of the frame; a combination that is not made says why where it is chosen. */
import { sizeNameOf } from '../catalogue/sizeNames.ts';
import { formatMoney } from '../money/format.ts';
import { Choice } from './Choice.tsx';
import { useSheet } from './sheet.ts';
import { useStore } from './useStore.ts';

export function FrameChoice() {
  const sheet = useSheet();
  const { t, frame, data } = sheet;
  const size = useStore(sheet.chosen.size);
  const colourway = useStore(sheet.chosen.colourway);
  const extra = (minor: number) => {
    if (minor === 0) return '';
    const text = formatMoney(
      Math.abs(minor),
      data.shop.currency,
      data.shop.currencyDigits,
      data.shop.language,
    );
    return ` ${minor > 0 ? '+' : '\u2212'}${text}`;
  };
  const nameOf = (code: string) => frame.colourways.find((one) => one.code === code)?.name ?? code;
  const notMade = (of: 'size' | 'colourway', value: string) => {
    const other = of === 'size' ? colourway : size;
    const found = frame.notOffered.find((one) =>
      of === 'size'
        ? one.size === value && one.colourway === other
        : one.colourway === value && one.size === other,
    );
    return found
      ? t('frame.notMade', {
          other: of === 'size' ? nameOf(other) : sizeNameOf(frame, other),
          because: found.because,
        })
      : null;
  };
  return (
    <div class="ws-frame">
      <Choice
        name="size"
        legend={t('frame.size')}
        chosen={size}
        options={frame.sizes.map(({ id, name = id, priceDifferenceMinor }) => ({
          value: id,
          label: `${name}${extra(priceDifferenceMinor)}`,
          note: notMade('size', id),
        }))}
      />
      <Choice
        name="colourway"
        legend={t('frame.colourway')}
        chosen={colourway}
        options={frame.colourways.map(({ code, name, front, temples, priceDifferenceMinor }) => ({
          value: code,
          label: (
            <>
              <svg class="ws-chip" viewBox="0 0 20 20" aria-hidden="true">
                <path d="M1 1h18v18H1z" fill={front.colour} />
                {/* A second colour, or that of the temples, which may be all that tells two apart. */}
                <path d="M19 1v18H1z" fill={front.second ?? temples.colour} />
              </svg>
              {name}
              {extra(priceDifferenceMinor)}
            </>
          ),
          note: notMade('colourway', code),
        }))}
      />
    </div>
  );
}
