/**
 * Photochromic lenses by their declared states. Nothing is interpolated: a state that was not declared is not known.
 *
 * They are stated at 23 °C after a standard source, with further states at 5 and 35 °C (ISO 8980-3, from memory).
 */
import { type TintCategory, tintCategory } from './tint.ts';

/** One declared state. */
export interface LightState {
  /** Luminous transmittance, fraction 0 to 1. */
  readonly transmittance: number;
  /** Lens temperature, °C; null where it does not matter. */
  readonly temperatureC: number | null;
}

/** The span of a lens over some of its declared states. */
export interface LightSpan<State extends LightState> {
  readonly lightest: State;
  readonly darkest: State;
  /** Category of the lightest state. */
  readonly lightestCategory: TintCategory;
  /** Category of the darkest state: the one that rules on driving by day. */
  readonly darkestCategory: TintCategory;
}

/** Temperature of the main declared states, °C. */
export const STANDARD_TEMPERATURE_C = 23;

/** Lightest and darkest of the states with their categories; null where there is no state. */
export function lightSpan<State extends LightState>(states: readonly State[]): LightSpan<State> | null {
  const ordered = [...states].sort((a, b) => b.transmittance - a.transmittance);
  const lightest = ordered.at(0);
  const darkest = ordered.at(-1);
  if (lightest === undefined || darkest === undefined) return null;
  return {
    lightest,
    darkest,
    lightestCategory: tintCategory(lightest.transmittance),
    darkestCategory: tintCategory(darkest.transmittance),
  };
}

/** The span at one lens temperature (°C), of the states declared at exactly that; null where none was. */
export const lightSpanAt = <State extends LightState>(
  states: readonly State[],
  temperatureC: number,
): LightSpan<State> | null => lightSpan(states.filter((state) => state.temperatureC === temperatureC));
