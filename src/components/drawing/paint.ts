/** Colours of a part as SVG paint: attributes only, since the page's policy refuses inline styles. */
import type { Colourway, PartColour } from '../../catalogue/frame.ts';

/** One part's paint. */
export interface Paint {
  /** Value of `fill`. */
  readonly fill: string;
  /** Below 1 for clear material: the whole part is seen through, not each piece of it. */
  readonly opacity: number;
  /** The mottle that the fill refers to; null where the part is of one colour. */
  readonly mottle: { readonly id: string; readonly colour: string; readonly second: string } | null;
}

const CLEAR_OPACITY = 0.62;

function paintOf(part: PartColour, id: string): Paint {
  const opacity = part.finish === 'clear' ? CLEAR_OPACITY : 1;
  if (part.finish !== 'mottled' || part.second === null) return { fill: part.colour, opacity, mottle: null };
  return { fill: `url(#${id})`, opacity, mottle: { id, colour: part.colour, second: part.second } };
}

/** Paint of the three parts of a colourway; ids begin with `uid`, parts of the same colour share one mottle. */
export function paints(colourway: Colourway, uid: string): Record<'front' | 'bridge' | 'temples', Paint> {
  const front = paintOf(colourway.front, `${uid}-mf`);
  const other = (part: PartColour, id: string) => (same(part, colourway.front) ? front : paintOf(part, id));
  return {
    front,
    bridge: other(colourway.bridge, `${uid}-mb`),
    temples: other(colourway.temples, `${uid}-mt`),
  };
}

function same(a: PartColour, b: PartColour): boolean {
  return a.colour === b.colour && a.second === b.second && a.finish === b.finish;
}

/** Mottles to define for a drawing, each once. */
export function mottles(parts: Record<string, Paint>): NonNullable<Paint['mottle']>[] {
  const all = Object.values(parts).flatMap((p) => (p.mottle ? [p.mottle] : []));
  return all.filter((m, i) => all.findIndex((other) => other.id === m.id) === i);
}
