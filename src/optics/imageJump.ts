/** The jump of the image where the line of sight crosses into a segment. */
import { within } from './domain.ts';

/**
 * Prism (prism dioptres, base towards the segment's centre) that sets in at the edge of a segment: the add times the
 * distance in cm from that edge to the segment's own optical centre. The distance power does not enter. Throws a
 * RangeError for a negative add or distance.
 */
export function imageJumpPrism(addD: number, edgeToCentreMm: number): number {
  within('add', addD, 0, Infinity, 'D');
  within('distance from the segment edge to its centre', edgeToCentreMm, 0, Infinity, 'mm');
  return (addD * edgeToCentreMm) / 10;
}
