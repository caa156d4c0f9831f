/** The plain name of a colour, to look for frames by: what a shopper calls it, not a measurement. */

export const COLOUR_FAMILIES = [
  'black',
  'grey',
  'white',
  'brown',
  'gold',
  'red',
  'pink',
  'green',
  'blue',
  'purple',
] as const;
export type ColourFamily = (typeof COLOUR_FAMILIES)[number];

/** Families by hue, each up to and with its degrees on the circle of hues; light and dull ones are told before. */
const BY_HUE: readonly (readonly [number, ColourFamily])[] = [
  [12, 'red'],
  [34, 'brown'],
  [68, 'gold'],
  [172, 'green'],
  [258, 'blue'],
  [300, 'purple'],
  [335, 'pink'],
  [360, 'red'],
];

/** Family of a colour, sRGB `#rrggbb`: by lightness where it has next to no hue, else by its hue. */
export function colourFamily(colour: string): ColourFamily {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map(
    (at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255,
  );
  const most = Math.max(red, green, blue);
  const chroma = most - Math.min(red, green, blue);
  if (most < 0.2) return 'black';
  if (chroma < 0.09) return most > 0.85 ? 'white' : 'grey';
  const hue = hueDeg(red, green, blue, most, chroma);
  // A dark or dull yellow is called brown.
  if (hue > 34 && hue <= 68 && (most < 0.55 || chroma < 0.2)) return most > 0.85 ? 'white' : 'brown';
  const reddish = hue <= 12 || hue > 300;
  if (reddish && most > 0.6 && chroma < 0.35) return 'pink';
  if (hue > 300 && hue <= 335 && most < 0.5) return 'purple';
  return BY_HUE.find(([to]) => hue <= to)?.[1] ?? 'red';
}

function hueDeg(red: number, green: number, blue: number, most: number, chroma: number): number {
  if (most === red) return (60 * ((green - blue) / chroma) + 360) % 360;
  if (most === green) return 60 * ((blue - red) / chroma) + 120;
  return 60 * ((red - green) / chroma) + 240;
}
