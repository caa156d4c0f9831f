/** What follows from the powers: those of the chosen use, and what an error of the PD is worth. Loaded on demand. */
import { writeDigits } from '../../catalogue/words.ts';
import { consequencesOf } from '../../configurator/entry/consequences.ts';
import { EYES } from '../../configurator/fields.ts';
import { writeLens } from '../../configurator/write.ts';
import type { Eye, SpheroCylinder } from '../../optics/types.ts';
import { useSheet } from '../sheet.ts';
import { useFigures } from '../useFigures.ts';
import { useStore } from '../useStore.ts';

function useConsequences() {
  const { read, data } = useSheet();
  const [pair] = useStore(read).request.pairs;
  return pair === undefined ? null : consequencesOf(pair, data);
}

const powerText = ({ sphereD, cylinderD, axisDeg }: SpheroCylinder) =>
  writeLens({ sphere: sphereD, cylinder: cylinderD, axis: axisDeg, prism: null, add: null });

/** The powers that the use orders, where it takes the add or a share of it. */
export function UseLine() {
  const { t, data, chosen } = useSheet();
  const use = useStore(chosen.use);
  const found = useConsequences();
  if (found === null || !EYES.some((eye) => found[eye].changed)) return null;
  const of = (eye: Eye) => {
    const { ordered } = found[eye];
    const letter = t(`${eye}Letter`);
    return ordered === null
      ? t('entry.use.unknown', { letter })
      : t('entry.use.eye', { letter, power: writeDigits(data.words, powerText(ordered)) });
  };
  return <p class="en-use">{t(`entry.use.${use}`, { right: of('right'), left: of('left') })}</p>;
}

/** Prism of one millimetre of error, and the near PD where none was entered. */
export function PdLines() {
  const { t, data } = useSheet();
  const found = useConsequences();
  const { prism } = useFigures();
  const tenth = new Intl.NumberFormat(data.shop.language, {
    minimumFractionDigits: 1,
    maximumFractionDigits: 1,
  });
  const mm = (value: number) => `${tenth.format(value)} ${t('unit.mm')}`;
  if (found === null) return null;
  const { right, left } = found;
  const amounts = [right.perMmPrism, left.perMmPrism].filter((amount) => amount !== null);
  const [first] = amounts;
  return (
    <>
      {right.perMmPrism !== null && left.perMmPrism !== null ? (
        <p class="en-per-mm">
          {t('entry.pd.perMm', { right: prism(right.perMmPrism), left: prism(left.perMmPrism) })}
        </p>
      ) : (
        <p class="en-per-mm">
          {first === undefined ? t('entry.pd.waiting') : t('entry.pd.perMmOne', { amount: prism(first) })}
        </p>
      )}
      {right.nearPdMm !== null && left.nearPdMm !== null && (
        <p>
          {t('entry.pd.near', {
            cm: data.shop.habits.nearDistanceMm / 10,
            right: mm(right.nearPdMm),
            left: mm(left.nearPdMm),
          })}
        </p>
      )}
    </>
  );
}
