import type { Tint, TintState } from '../../catalogue/tint.ts';
import { drivingFitness, tintCategory } from '../../optics/tint.ts';
import type { ShopWords } from '../shopWords.ts';
import { type Row, rowWriter } from './row.ts';

/** Figures of a tint that hold in all its states. */
export function tintRows(words: ShopWords, tint: Tint): readonly Row[] {
  const { t } = words;
  const { row, yesNo } = rowWriter(words);
  return [
    row('tintKind', t(`tintKind.${tint.kind}`)),
    row('polarised', yesNo(tint.polarised)),
    row('mirrored', yesNo(tint.mirrored)),
  ];
}

/** One state of a tint as shown in the table of states. */
export interface StateRow {
  readonly name: string;
  readonly transmittance: string;
  readonly category: string;
  readonly driving: string;
}

/** Transmittance, category and driving of each declared state, of the tint by itself. */
export function stateRows({ percent, t }: ShopWords, tint: Tint): readonly StateRow[] {
  return tint.states.map((state) => ({
    name: state.name,
    transmittance: percent(state.transmittance, 1),
    category: String(tintCategory(state.transmittance) ?? t('tint.darker')),
    driving: t(driving(tint, state)),
  }));
}

/** The key of what a state allows. */
function driving(tint: Tint, state: TintState): string {
  const { spectrum } = tint;
  const { day, night } = drivingFitness({
    luminousTransmittance: state.transmittance,
    // The spectrum is declared for the darkest state alone.
    ...(spectrum && isDarkest(tint, state) ? { spectrum } : {}),
  });
  if (!day) return 'tint.never';
  return night ? 'tint.dayAndNight' : 'tint.dayOnly';
}

function isDarkest(tint: Tint, state: TintState): boolean {
  return tint.states.every((other) => other.transmittance >= state.transmittance);
}
