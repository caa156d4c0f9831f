/** What is typed at the inspection of a pair, read into figures. */
import { readNumber } from '../../configurator/readNumber.ts';
import { prismFromBase } from '../../optics/prismBase.ts';
import type { Eye, PrismVector, SpheroCylinder } from '../../optics/types.ts';
import type { JudgedPair } from '../../quote/judgePair.ts';
import type { MeasuredLens, MeasuredPair, VerificationPower } from '../../workroom/inspection/measured.ts';
import type { Draft } from './benchState.ts';
import { AXIS, eyeFields, type MeasureField, pairFields, verificationFields } from './measureFields.ts';

/** A field that cannot be read, or is outside of what a lens can be. */
export interface WrongField {
  /** As in the draft. */
  readonly key: string;
  readonly field: MeasureField;
  /** Not a number, outside of the field's range, or empty where another field needs it. */
  readonly why: 'unread' | 'range' | 'needed';
}

export interface Measuring {
  /** Null while a power is missing or a field is wrong. */
  readonly measured: MeasuredPair | null;
  readonly wrong: readonly WrongField[];
  /** Eyes whose power is not entered; one that is entered wrongly is not missing. */
  readonly missing: readonly Eye[];
}

/** What was typed for one pair of an order, or another part of it: its fields without the part's name before them. */
export function pairDraft(draft: Draft, at: number | 'earlier'): Draft {
  const start = `${at}.`;
  const own = Object.entries(draft).filter(([key]) => key.startsWith(start));
  return Object.fromEntries(own.map(([key, text]) => [key.slice(start.length), text]));
}

type Values = Readonly<Record<string, number>>;

/** What was entered. `lines` is the length of the shop's alignment list. */
export function readMeasured(judged: JudgedPair, draft: Draft, lines: number): Measuring {
  const wrong: WrongField[] = [];
  const eye = (side: Eye) => readEye(judged, draft, side, wrong);
  const [right, left] = [eye('right'), eye('left')];
  const { separation } = takeFields(draft, '', pairFields(judged), wrong);
  const bare: [Eye, Values][] = [
    ['right', right],
    ['left', left],
  ];
  const missing = bare.map(([side]) => side).filter((side) => (draft[`${side}.sphere`] ?? '').trim() === '');
  if (wrong.length > 0 || missing.length > 0) return { measured: null, wrong, missing };
  const stated = bare.flatMap(([side, values]) => {
    const power = statedPower(values);
    return power === null ? [] : [[side, power] as const];
  });
  const thinned = right['thinning'] !== undefined && left['thinning'] !== undefined;
  const remarks = (draft['remarks'] ?? '').trim();
  const measured: MeasuredPair = {
    right: lensOf('right', right, draft),
    left: lensOf('left', left, draft),
    by: (draft['by'] ?? '').trim(),
    on: draft['on'] ?? '',
    alignment: Array.from({ length: lines }, (_, at) => draft[`aligned.${at}`] === 'yes'),
    ...(separation === undefined ? {} : { segmentSeparationMm: separation }),
    ...(thinned ? { thinningPrism: { right: right['thinning'] ?? 0, left: left['thinning'] ?? 0 } } : {}),
    verification: Object.fromEntries(stated),
    ...(remarks === '' ? {} : { remarks }),
  };
  return { measured, wrong, missing };
}

function readEye(judged: JudgedPair, draft: Draft, side: Eye, wrong: WrongField[]): Values {
  const fields = [...eyeFields(judged), ...verificationFields(judged)];
  const values = takeFields(draft, `${side}.`, fields, wrong);
  for (const prefix of ['', 'stated-']) {
    const key = `${side}.${prefix}axis`;
    const needed = (values[`${prefix}cylinder`] ?? 0) !== 0 && (draft[key] ?? '').trim() === '';
    if (needed) wrong.push({ key, field: AXIS, why: 'needed' });
  }
  return values;
}

/** Figures of the fields that can be read; the others are added to `wrong`. */
function takeFields(
  draft: Draft,
  prefix: string,
  fields: readonly MeasureField[],
  wrong: WrongField[],
): Values {
  const values: Record<string, number> = {};
  for (const one of fields) {
    const key = prefix + one.name;
    const read = readNumber(draft[key] ?? '');
    if (read.kind === 'blank') continue;
    if (read.kind === 'unread') wrong.push({ key, field: one, why: 'unread' });
    else if (read.value < one.least || read.value > one.most) wrong.push({ key, field: one, why: 'range' });
    else values[one.name] = read.value;
  }
  return values;
}

const powerOf = (values: Values, prefix = ''): SpheroCylinder => ({
  sphereD: values[`${prefix}sphere`] ?? 0,
  cylinderD: values[`${prefix}cylinder`] ?? 0,
  // An axis of 0 is written 180.
  axisDeg: values[`${prefix}axis`] || 180,
});

function statedPower(values: Values): VerificationPower | null {
  if (values['stated-sphere'] === undefined) return null;
  return { power: powerOf(values, 'stated-'), addD: values['stated-add'] ?? null, prism: null };
}

function prismOf(eye: Eye, { across, upright }: Values, draft: Draft): PrismVector | undefined {
  if (across === undefined && upright === undefined) return undefined;
  const side = draft[`${eye}.acrossBase`] === 'out' ? 'out' : 'in';
  const up = draft[`${eye}.uprightBase`] === 'down' ? 'down' : 'up';
  const horizontal = prismFromBase(eye, { amount: across ?? 0, base: side });
  const vertical = prismFromBase(eye, { amount: upright ?? 0, base: up });
  return { x: horizontal.x + vertical.x, y: horizontal.y + vertical.y };
}

const NAMES = {
  addD: 'add',
  pdMm: 'pd',
  heightMm: 'height',
  segmentHeightMm: 'segment',
  segmentTiltDeg: 'tilt',
  centreThicknessMm: 'thickness',
  baseCurveReadingD: 'curve',
  warpageD: 'warpage',
  polarisingAxisDeg: 'polarising',
} as const;

function lensOf(eye: Eye, values: Values, draft: Draft): MeasuredLens {
  const known = Object.entries(NAMES).flatMap(([key, name]) =>
    values[name] === undefined ? [] : [[key, values[name]] as const],
  );
  const prism = prismOf(eye, values, draft);
  return { power: powerOf(values), ...Object.fromEntries(known), ...(prism === undefined ? {} : { prism }) };
}
