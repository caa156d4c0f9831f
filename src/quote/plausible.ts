/**
 * Entries that cannot be meant: each fault says what is expected. The worksheet shows the same sentences where the
 * shopper typed. Ranges hold every prescription that is realistic; what the shop can make is for the rules.
 */
import type { Fault } from './fault.ts';
import type { BothEyes, EyeRequest, FitRequest, PairRequest, PrismRequest } from './request.ts';

/** Inclusive limits of an entry, with its unit. */
interface Span {
  readonly from: number;
  readonly to: number;
  readonly unit: string;
}

const SPHERE: Span = { from: -30, to: 30, unit: 'D' };
const CYLINDER: Span = { from: -12, to: 12, unit: 'D' };
const ADD: Span = { from: 0.25, to: 4, unit: 'D' };
const PRISM: Span = { from: 0, to: 20, unit: 'prism dioptres' };
const BOTH_PD: Span = { from: 40, to: 85, unit: 'mm' };
const ONE_PD: Span = { from: 20, to: 43, unit: 'mm' };
const HEIGHT: Span = { from: 5, to: 60, unit: 'mm' };
const VERTEX: Span = { from: 5, to: 25, unit: 'mm' };
const TILT: Span = { from: -10, to: 25, unit: 'degrees' };
const FACE_FORM: Span = { from: -5, to: 35, unit: 'degrees' };
const EIGHTH = 0.125;

/** A number within its span, or the fault. */
function outside(path: string, noun: string, value: number, span: Span): Fault[] {
  if (value >= span.from && value <= span.to) return [];
  return [
    {
      path,
      message: `${noun} is out of range.`,
      expected: `${span.from} to ${span.to} ${span.unit}${hint(value, span)}`,
      found: String(value),
    },
  ];
}

/** A slip of the decimal point is the commonest, 6.2 for 62; then both eyes' PD where one eye's is asked. */
function hint(value: number, span: Span): string {
  if (span === ONE_PD && value >= BOTH_PD.from && value <= BOTH_PD.to)
    return ` (${value} is for both eyes together; half of it is ${value / 2})`;
  const ten = [value * 10, value / 10].find((other) => other >= span.from && other <= span.to);
  return ten !== undefined && span.unit === 'mm' ? ` (did you mean ${Number(ten.toFixed(2))}?)` : '';
}

function stepFault(path: string, noun: string, value: number): Fault[] {
  if (Number.isInteger(value / EIGHTH)) return [];
  const near = Math.round(value * 4) / 4;
  return [
    {
      path,
      message: `${noun} is written in quarter or eighth steps.`,
      expected: `a multiple of 0.25 or 0.125 D, such as ${near.toFixed(2)}`,
      found: String(value),
    },
  ];
}

/** Faults of one eye's prescription. */
export function eyeFaults(eye: EyeRequest, path: string): Fault[] {
  const { sphere, cylinder, add, prism } = eye;
  const faults: Fault[] = [];
  if (sphere !== undefined)
    faults.push(
      ...outside(`${path}.sphere`, 'The sphere', sphere, SPHERE),
      ...stepFault(`${path}.sphere`, 'The sphere', sphere),
    );
  if (cylinder)
    faults.push(
      ...outside(`${path}.cylinder`, 'The cylinder', cylinder, CYLINDER),
      ...stepFault(`${path}.cylinder`, 'The cylinder', cylinder),
    );
  if (add)
    faults.push(...outside(`${path}.add`, 'The add', add, ADD), ...stepFault(`${path}.add`, 'The add', add));
  return [...faults, ...axisFaults(eye, path), ...prismFaults(prism ?? [], `${path}.prism`)];
}

function axisFaults({ sphere, cylinder, axis, balance }: EyeRequest, path: string): Fault[] {
  const faults: Fault[] = [];
  const hasAxis = axis !== undefined && axis !== null;
  if (hasAxis && (axis < 0 || axis > 180 || !Number.isInteger(axis)))
    faults.push({
      path: `${path}.axis`,
      message:
        axis >= 0 && axis <= 180 ? 'The axis is a whole number of degrees.' : 'The axis is out of range.',
      expected: '1 to 180 (0 is written 180)',
      found: String(axis),
    });
  if (cylinder && !hasAxis)
    faults.push({
      path: `${path}.axis`,
      message: 'A cylinder needs its axis.',
      expected: '1 to 180 degrees',
      found: 'nothing',
    });
  if (hasAxis && !cylinder)
    faults.push({
      path: `${path}.axis`,
      message: 'An axis stands without a cylinder.',
      expected: 'a cylinder beside it, or no axis',
      found: String(axis),
    });
  if (cylinder && sphere === undefined && !balance)
    faults.push({
      path: `${path}.sphere`,
      message: 'A cylinder stands without a sphere.',
      expected: 'the sphere, 0 where the prescription says plano',
      found: 'nothing',
    });
  return faults;
}

function prismFaults(prisms: readonly PrismRequest[], path: string): Fault[] {
  return prisms.flatMap(({ amount, base }, at) => [
    ...outside(`${path}.${at}.amount`, 'The prism', amount, PRISM),
    ...(typeof base === 'number' && (base < 0 || base > 360)
      ? [
          {
            path: `${path}.${at}.base`,
            message: 'The base direction is out of range.',
            expected: 'in, out, up, down, or 0 to 360 degrees',
            found: String(base),
          },
        ]
      : []),
  ]);
}

/** Faults of the measurements. */
export function fitFaults(fit: FitRequest, path: string): Fault[] {
  const each = (name: string, noun: string, value: BothEyes | undefined, span: Span): Fault[] =>
    value === undefined
      ? []
      : [
          ...outside(`${path}.${name}.right`, noun, value.right, span),
          ...outside(`${path}.${name}.left`, noun, value.left, span),
        ];
  const one = (name: string, noun: string, value: number | undefined, span: Span): Fault[] =>
    value === undefined ? [] : outside(`${path}.${name}`, noun, value, span);
  const pd = (name: string, value: FitRequest['pd']): Fault[] =>
    typeof value === 'number'
      ? one(name, 'The distance between the pupils', value, BOTH_PD)
      : each(name, 'The distance from the middle to the pupil', value, ONE_PD);
  return [
    ...pd('pd', fit.pd),
    ...pd('nearPd', fit.nearPd),
    ...each('fittingHeight', 'The fitting height', fit.fittingHeight, HEIGHT),
    ...each('segmentHeight', 'The segment height', fit.segmentHeight, HEIGHT),
    ...one('vertexDistance', 'The vertex distance', fit.vertexDistance, VERTEX),
    ...one('pantoscopicTilt', 'The pantoscopic tilt', fit.pantoscopicTilt, TILT),
    ...one('faceForm', 'The face form', fit.faceForm, FACE_FORM),
  ];
}

/** Faults of a whole pair that no shop needs to be asked about. */
export function pairFaults(pair: PairRequest, path: string): Fault[] {
  const { prescription, fit, frame } = pair;
  const rx = `${path}.prescription`;
  const vertex = prescription?.vertexDistance ?? undefined;
  return [
    ...(prescription === null
      ? []
      : [
          ...eyeFaults(prescription.right, `${rx}.right`),
          ...eyeFaults(prescription.left, `${rx}.left`),
          ...(vertex === undefined
            ? []
            : outside(`${rx}.vertexDistance`, 'The vertex distance', vertex, VERTEX)),
        ]),
    ...fitFaults(fit ?? {}, `${path}.fit`),
    ...(typeof frame === 'object'
      ? [
          ...outside(`${path}.frame.a`, 'A, the lens width,', frame.a, { from: 30, to: 75, unit: 'mm' }),
          ...outside(`${path}.frame.b`, 'B, the lens height,', frame.b, { from: 18, to: 65, unit: 'mm' }),
          ...outside(`${path}.frame.dbl`, 'DBL, the bridge,', frame.dbl, { from: 8, to: 30, unit: 'mm' }),
        ]
      : []),
  ];
}
