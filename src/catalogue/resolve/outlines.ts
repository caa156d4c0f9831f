/** Makes the outlines of all sizes, and holds the holes of drilled frames against them. */
import { inside } from '../../optics/outline.ts';
import type { Outline } from '../../optics/types.ts';
import {
  type AuthoredFrame,
  type AuthoredSize,
  type Content,
  faultsOf,
  type Sound,
  sound,
} from '../content.ts';
import type { ContentFault } from '../fault.ts';
import type { FrameOutline, Hole } from '../frame.ts';
import { faultAt } from '../reading/entry.ts';
import { valueAt } from '../schema/parse.ts';
import { centreTrace, type MadeOutline, makeFitted, makeTraced } from './outline.ts';
import { outOfLine } from './outOfLine.ts';

/** Outlines by frame, in the order of its sizes; a frame with a fault has fewer. */
export interface Outlines {
  readonly byFrame: ReadonlyMap<string, readonly FrameOutline[]>;
  readonly faults: readonly ContentFault[];
}

/** All outlines of the shop, and every fault found while making them. */
export function makeOutlines(content: Content): Outlines {
  const faults: ContentFault[] = [];
  const traces = new Map<string, Outline>();
  for (const { id, origin, value } of sound(content.outlines)) {
    const leap = 'radiiMm' in (origin.raw as object) ? outOfLine(value.radiiMm) : null;
    if (leap !== null) {
      const found = String(value.radiiMm[leap.at]);
      faults.push(faultAt(origin, ['radiiMm', leap.at], badRadius(found, leap.lineMm)));
      continue;
    }
    const trace = centreTrace(value.radiiMm);
    if (trace !== null) traces.set(id, trace);
    else
      faults.push(
        faultAt(
          origin,
          [valueAt(origin.raw, ['trace']) === undefined ? 'radiiMm' : 'trace'],
          badTrace(value.radiiMm.length),
        ),
      );
  }
  const fitted = new Map<string, MadeOutline>();
  const byFrame = new Map<string, FrameOutline[]>();
  const ofFrame = ({ id, origin, value }: Sound<AuthoredFrame>): ContentFault[] => {
    const found: ContentFault[] = [];
    const outlines: FrameOutline[] = [];
    for (const [index, size] of value.sizes.entries()) {
      const made = makeOutline(size, traces, fitted);
      // The outline that is named is missing or broken: that is said elsewhere.
      if (made === null) continue;
      if (made.ok) {
        outlines.push(made.outline);
        found.push(
          ...holeFaults(value, size, made.outline).map(([path, detail]) => faultAt(origin, path, detail)),
        );
      } else {
        found.push(
          ...made.faults.map(({ field, detail }) => faultAt(origin, ['sizes', index, field], detail)),
        );
      }
    }
    byFrame.set(id, outlines);
    return found;
  };
  return { faults: [...faults, ...faultsOf(content.frames, ofFrame)], byFrame };
}

/** Fitting takes milliseconds and shops repeat their sizes, so each is fitted once. */
function makeOutline(
  size: AuthoredSize,
  traces: ReadonlyMap<string, Outline>,
  fitted: Map<string, MadeOutline>,
) {
  if ('traced' in size.outline) {
    const trace = traces.get(size.outline.traced);
    return trace === undefined ? null : makeTraced(size.outline.traced, trace, size);
  }
  const { family } = size.outline;
  const key = `${family} ${size.aMm} ${size.bMm} ${size.edMm}`;
  const made = fitted.get(key) ?? makeFitted(family, size);
  fitted.set(key, made);
  return made;
}

const badRadius = (received: string, lineMm: number) =>
  ({
    code: 'bad-trace',
    expected: `a radius in line with those beside it, about ${lineMm.toFixed(1)} mm`,
    received,
    hint: 'Measure it again. Decimals stand behind a point: a decimal comma makes two radii of one.',
  }) as const;

function badTrace(count: number) {
  return {
    code: 'bad-trace',
    expected: 'radii of one lens, whose whole edge is seen from the middle of its box',
    received: `a list of ${count} from which no such outline comes`,
    hint: 'Trace the lens again, and look for a radius that is out of line.',
  } as const;
}

/** Points on the rim of a hole, from the boxed centre, mm. */
function holeRim({ side, insetMm, aboveCentreMm, diameterMm }: Hole, aMm: number) {
  const xMm = (side === 'nasal' ? 1 : -1) * (aMm / 2 - insetMm);
  return Array.from({ length: 24 }, (_, index) => {
    const angle = (index * Math.PI) / 12;
    const radius = diameterMm / 2;
    return { xMm: xMm + radius * Math.cos(angle), yMm: aboveCentreMm + radius * Math.sin(angle) };
  });
}

function holeFaults({ mounting }: AuthoredFrame, size: AuthoredSize, outline: FrameOutline) {
  if (mounting.kind !== 'drilled') return [];
  return mounting.holes.flatMap((hole, index) => {
    if (holeRim(hole, size.aMm).every((point) => inside(outline, point))) return [];
    const detail = {
      code: 'hole-outside',
      expected: `a hole whose whole rim is inside the lens of every size`,
      received: `one that cuts the edge in size ${size.id}`,
      hint: 'Enlarge insetMm, bring aboveCentreMm nearer to 0, or mend the outline.',
    } as const;
    return [[['mounting', 'drilled', index] as const, detail] as const];
  });
}
