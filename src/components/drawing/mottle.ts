/**
 * A mottled material as a repeating pattern of 31 by 23 mm: drifts of the second colour in the first, soft at
 * their edges as in layered sheet.
 */
import type { Paint } from './paint.ts';

const DRIFTS = [
  'M1.5 4.5c2.6-3.4 6.8-3.6 8.7-1.5s4 .6 5.3 2-.6 3.7-3.3 3.3-2.7 2.4-6 2.3S-.6 7.3 1.5 4.5Z',
  'M18.3 2.6c2-1.9 4.6-1.6 6.5-.5s4.5 1 4.8 2.9-2.4 2.7-4.3 2.2-2.3 1.8-4.9 1.2-3.9-4.1-2.1-5.8Z',
  'M11.2 12.3c1.7-1.7 4.2-2.1 5.7-.8s3.7.2 4.3 1.9-1.2 3.5-3.4 3.2-2.5 1.6-4.8.8-3.4-3.5-1.8-5.1Z',
  'M23.6 11.4c1.5-1.3 3.4-.9 4.9.2s2 2.9.6 4.2-3 .6-4.2.5-3-1.2-2.8-2.6.5-1.5 1.5-2.3Z',
  'M2.6 14.6c1.9-1.5 4.1-.8 4.9.7s.6 3.4-1.3 4.1-3.7.2-4.7-1-.5-2.6 1.1-3.8Z',
  'M17 19.2c1.6-1 4.2-.8 5.3.4s-.3 2.4-2.2 2.5-3.7.1-4.3-.8.1-1.4 1.2-2.1Z',
  'M9.2 19.4c.9-.7 2.2-.5 2.5.4s-.6 1.8-1.7 1.7-1.7-1.4-.8-2.1ZM15.6 8.9c.8-.5 1.9-.3 2 .5s-.8 1.3-1.6 1.1-1.2-1.1-.4-1.6Z',
].join('');

/** The pattern's element. Colours and id come from the content's own schema: `#rrggbb` and letters. */
export function mottlePattern({ id, colour, second }: NonNullable<Paint['mottle']>): string {
  return [
    `<pattern id="${id}" width="31" height="23" patternUnits="userSpaceOnUse" patternTransform="rotate(-28) scale(.78)">`,
    `<rect width="31" height="23" fill="${colour}"></rect>`,
    `<path d="${DRIFTS}" fill="${second}" fill-opacity=".62" stroke="${second}" stroke-width="1.3" stroke-opacity=".3" stroke-linejoin="round"></path>`,
    `<path d="${DRIFTS}" fill="${colour}" fill-opacity=".28" transform="translate(1.4 1.1)"></path>`,
    '</pattern>',
  ].join('');
}
