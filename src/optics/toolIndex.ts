/**
 * Tool index: a lens clock and a lap chart read a curve as if the material had one fixed index, the calibration.
 * Most trade texts give 1.530 (from memory); an encyclopedia article has 1.523. So it is a parameter everywhere.
 */

/** The calibration that most trade texts give. */
const TOOL_INDEX = 1.53;

/** True surface power, D, of a curve that reads `readingD` at calibration `cal`: F = reading (n - 1)/(cal - 1). */
export function truePowerD(readingD: number, index: number, cal = TOOL_INDEX): number {
  return (readingD * (index - 1)) / (cal - 1);
}

/** The reading, D, at calibration `cal` of a surface of true power `powerD` in `index`. Inverse of `truePowerD`. */
export function toolReadingD(powerD: number, index: number, cal = TOOL_INDEX): number {
  return (powerD * (cal - 1)) / (index - 1);
}
