/** The frame that a shopper already has: its entries, and how it stands in for a frame of the shop. */
import { type Frame, MOUNTINGS, type MountingKind } from '../../catalogue/frame.ts';
import type { OwnFrame } from '../../quote/request.ts';
import type { Entries } from '../fields.ts';
import { textOf } from '../fields.ts';
import type { Reader } from '../readField.ts';

/** The family that is taken where none is chosen: the engine's own. */
export const USUAL_FAMILY = 'panto';

/** What a worksheet of an own frame has in the place of a frame of the shop: nothing of it is sold. */
export const OWN_FRAME: Frame = {
  id: 'your-frame',
  model: '',
  collection: '',
  summary: '',
  story: '',
  priceMinor: 0,
  material: '',
  wearer: 'adult',
  sun: false,
  mounting: { kind: 'full' },
  rimDepthMm: 0,
  rimCoverMm: 0,
  faceFormDeg: 0,
  frameCurveD: 0,
  massG: 0,
  comesFitted: '',
  inTheBox: [],
  colourways: [],
  sizes: [],
  notOffered: [],
};

/** Whether a worksheet is one of an own frame. */
export const isOwn = (frame: Pick<Frame, 'id'>): boolean => frame.id === OWN_FRAME.id;

/** Stands in while the frame is not known, so that options and prices of lenses can be told; never judged. */
const UNKNOWN: OwnFrame = { a: 50, b: 40, dbl: 18, family: USUAL_FAMILY, mounting: 'full' };

const MOUNTING_OF: Readonly<Record<MountingKind, Frame['mounting']>> = {
  full: { kind: 'full' },
  grooved: { kind: 'grooved' },
  drilled: { kind: 'drilled', holes: [] },
};

export const mountingOf = (entries: Entries): MountingKind =>
  MOUNTINGS.find((kind) => kind === textOf(entries, 'own.mounting')) ?? 'full';

/** The stand-in frame with the mounting as chosen: materials follow it. */
export const standIn = (entries: Entries): Frame => ({
  ...OWN_FRAME,
  mounting: MOUNTING_OF[mountingOf(entries)],
});

export interface ReadOwnFrame {
  readonly frame: OwnFrame;
  /** Whether A, B and DBL are there; else `frame` only stands in. */
  readonly known: boolean;
}

/** The frame as entered, its faults added to the reader's. */
export function readOwnFrame(reader: Reader): ReadOwnFrame {
  const a = reader.number('own.a', 'plain');
  const b = reader.number('own.b', 'plain');
  const dbl = reader.number('own.dbl', 'plain');
  const ed = reader.number('own.ed', 'plain');
  for (const field of ['own.a', 'own.b', 'own.dbl'] as const)
    if (reader.text(field) === '') reader.fault(field, `${field.slice(4)}-missing`);
  const mounting = mountingOf(reader.entries);
  if (a === undefined || b === undefined || dbl === undefined)
    // What is there already is held against its range at once.
    return {
      frame: { ...UNKNOWN, mounting, a: a ?? UNKNOWN.a, b: b ?? UNKNOWN.b, dbl: dbl ?? UNKNOWN.dbl },
      known: false,
    };
  return {
    frame: {
      a,
      b,
      dbl,
      ...(ed === undefined ? {} : { ed }),
      family: reader.text('own.family') || USUAL_FAMILY,
      mounting,
    },
    known: true,
  };
}
