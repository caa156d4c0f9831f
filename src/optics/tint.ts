/**
 * Categories of sunglare filters by luminous transmittance, and whether one may be worn at the wheel.
 *
 * Edges: a lower edge is exclusive, an upper inclusive (College of Optometrists, quoting BS EN ISO 12312-1:2013).
 */
import { within } from './domain.ts';
import { leastTransmittance, type Spectrum } from './spectrum.ts';

/** Filter category; null below the range of category 4. */
export type TintCategory = 0 | 1 | 2 | 3 | 4 | null;

/** Outcome of one requirement; "not shown" where the data for it was not declared, never a silent pass. */
export type Shown = 'met' | 'not met' | 'not shown';

/** Ratios of signal-light transmittance to luminous transmittance, as the maker declares them. */
export interface SignalQuotients {
  readonly red: number;
  readonly yellow: number;
  readonly green: number;
  readonly blue: number;
}

/** What is known of a filter; transmittances as fractions 0 to 1. */
export interface FilterData {
  readonly luminousTransmittance: number;
  readonly spectrum?: Spectrum;
  readonly signalQuotients?: SignalQuotients;
}

/** Whether a filter may be worn while driving, with each requirement by itself. */
export interface DrivingFitness {
  readonly category: TintCategory;
  /** By day, as far as the declared data goes: false once any requirement is not met. */
  readonly day: boolean;
  /** At twilight or night, in the same sense. */
  readonly night: boolean;
  /** Category 0 to 3 (4 never, nor darker). */
  readonly dayTransmittance: Shown;
  /** Luminous transmittance of 75 % or more. */
  readonly nightTransmittance: Shown;
  /** Spectral transmittance from 475 to 650 nm at least 0.2 of the luminous. */
  readonly spectral: Shown;
  /** Signal quotients: red 0.80, others 0.60 (from memory; editions differ). */
  readonly signals: Shown;
}

/** Least luminous transmittance for twilight and night driving. */
export const NIGHT_DRIVING_LEAST = 0.75;
/** Least signal quotients, from memory (EN ISO 12312-1); editions differ. */
export const LEAST_SIGNAL_QUOTIENTS: SignalQuotients = { red: 0.8, yellow: 0.6, green: 0.6, blue: 0.6 };

const LOWER_EDGES = [0.8, 0.43, 0.18, 0.08, 0.03] as const;
// Products of densities land a rounding error beside an edge; they count as on it.
const ROUNDING = 1e-9;

/**
 * Category 0 to 4 for a luminous transmittance (fraction 0 to 1): 0 over 80 %, 1 over 43, 2 over 18, 3 over 8,
 * 4 over 3; null at 3 % or less, darker than any category. Throws a RangeError outside 0 to 1.
 */
export function tintCategory(luminousTransmittance: number): TintCategory {
  within('luminous transmittance', luminousTransmittance, 0, 1, '');
  const category = LOWER_EDGES.findIndex((edge) => luminousTransmittance > edge + ROUNDING);
  return category === -1 ? null : (category as 0 | 1 | 2 | 3 | 4);
}

/** Judges a filter for driving; requirements without data are "not shown" and do not count as met. */
export function drivingFitness(filter: FilterData): DrivingFitness {
  const { luminousTransmittance } = filter;
  const category = tintCategory(luminousTransmittance);
  const dayTransmittance = shown(category !== null && category < 4);
  const nightTransmittance = shown(luminousTransmittance >= NIGHT_DRIVING_LEAST - ROUNDING);
  const spectral = spectralRequirement(filter);
  const signals = signalRequirement(filter.signalQuotients);
  const day = [dayTransmittance, spectral, signals].every((outcome) => outcome !== 'not met');
  return {
    category,
    day,
    night: day && nightTransmittance === 'met',
    dayTransmittance,
    nightTransmittance,
    spectral,
    signals,
  };
}

const shown = (met: boolean): Shown => (met ? 'met' : 'not met');

function spectralRequirement({ spectrum, luminousTransmittance }: FilterData): Shown {
  const least = spectrum === undefined ? null : leastTransmittance(spectrum, 475, 650);
  return least === null ? 'not shown' : shown(least >= 0.2 * luminousTransmittance - ROUNDING);
}

function signalRequirement(quotients: SignalQuotients | undefined): Shown {
  if (quotients === undefined) return 'not shown';
  const colours = ['red', 'yellow', 'green', 'blue'] as const;
  return shown(colours.every((colour) => quotients[colour] >= LEAST_SIGNAL_QUOTIENTS[colour] - ROUNDING));
}
