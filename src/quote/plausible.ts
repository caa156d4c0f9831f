/**
 * Entries that cannot be meant: each fault says what is expected. A page says the same in its own words by `told`.
 * Ranges hold every prescription that is realistic; what the shop can make is for the rules.
 */
import type { Fault } from './fault.ts';
import { BOTH_PD, type Noun, noun, ONE_PD, outside, type Span, stepFault } from './outside.ts';
import type { BothEyes, EyeRequest, FitRequest, PairRequest, PrismRequest } from './request.ts';

const SPHERE: Span = { from: -30, to: 30, unit: 'diopters' };
const CYLINDER: Span = { from: -12, to: 12, unit: 'diopters' };
const ADD: Span = { from: 0.25, to: 4, unit: 'diopters' };
const PRISM: Span = { from: 0, to: 20, unit: 'prism' };
const HEIGHT: Span = { from: 5, to: 60, unit: 'mm' };
const VERTEX: Span = { from: 5, to: 25, unit: 'mm' };
const TILT: Span = { from: -10, to: 25, unit: 'degrees' };
const FACE_FORM: Span = { from: -5, to: 35, unit: 'degrees' };

const THE_SPHERE = noun('sphere', 'The sphere');
const THE_CYLINDER = noun('cylinder', 'The cylinder');
const THE_ADD = noun('add', 'The add');

/** Faults of one eye's prescription. */
export function eyeFaults(eye: EyeRequest, path: string): Fault[] {
  const { sphere, cylinder, add, prism } = eye;
  const faults: Fault[] = [];
  if (sphere !== undefined)
    faults.push(
      ...outside(`${path}.sphere`, THE_SPHERE, sphere, SPHERE),
      ...stepFault(`${path}.sphere`, THE_SPHERE, sphere),
    );
  if (cylinder)
    faults.push(
      ...outside(`${path}.cylinder`, THE_CYLINDER, cylinder, CYLINDER),
      ...stepFault(`${path}.cylinder`, THE_CYLINDER, cylinder),
    );
  if (add)
    faults.push(...outside(`${path}.add`, THE_ADD, add, ADD), ...stepFault(`${path}.add`, THE_ADD, add));
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
      told: { code: axis >= 0 && axis <= 180 ? 'axis-whole' : 'axis-range', slots: {} },
    });
  if (cylinder && !hasAxis)
    faults.push({
      path: `${path}.axis`,
      message: 'A cylinder needs its axis.',
      expected: '1 to 180 degrees',
      found: 'nothing',
      told: { code: 'axis-missing', slots: {} },
    });
  if (hasAxis && !cylinder)
    faults.push({
      path: `${path}.axis`,
      message: 'An axis stands without a cylinder.',
      expected: 'a cylinder beside it, or no axis',
      found: String(axis),
      told: { code: 'axis-alone', slots: {} },
    });
  if (cylinder && sphere === undefined && !balance)
    faults.push({
      path: `${path}.sphere`,
      message: 'A cylinder stands without a sphere.',
      expected: 'the sphere, 0 where the prescription says plano',
      found: 'nothing',
      told: { code: 'cylinder-alone', slots: {} },
    });
  return faults;
}

function prismFaults(prisms: readonly PrismRequest[], path: string): Fault[] {
  return prisms.flatMap(({ amount, base }, at) => [
    ...outside(`${path}.${at}.amount`, noun('prism', 'The prism'), amount, PRISM),
    ...(typeof base === 'number' && (base < 0 || base > 360)
      ? [
          {
            path: `${path}.${at}.base`,
            message: 'The base direction is out of range.',
            expected: 'in, out, up, down, or 0 to 360 degrees',
            found: String(base),
            told: { code: 'base-range' as const, slots: {} },
          },
        ]
      : []),
  ]);
}

/** Faults of the measurements. */
export function fitFaults(fit: FitRequest, path: string): Fault[] {
  const each = (name: string, of: Noun, value: BothEyes | undefined, span: Span): Fault[] =>
    value === undefined
      ? []
      : [
          ...outside(`${path}.${name}.right`, of, value.right, span),
          ...outside(`${path}.${name}.left`, of, value.left, span),
        ];
  const one = (name: string, of: Noun, value: number | undefined, span: Span): Fault[] =>
    value === undefined ? [] : outside(`${path}.${name}`, of, value, span);
  const pd = (name: string, value: FitRequest['pd']): Fault[] =>
    typeof value === 'number'
      ? one(name, noun('pd', 'The distance between the pupils'), value, BOTH_PD)
      : each(name, noun('half-pd', 'The distance from the middle to the pupil'), value, ONE_PD);
  return [
    ...pd('pd', fit.pd),
    ...pd('nearPd', fit.nearPd),
    ...each('fittingHeight', noun('fitting-height', 'The fitting height'), fit.fittingHeight, HEIGHT),
    ...each('segmentHeight', noun('segment-height', 'The segment height'), fit.segmentHeight, HEIGHT),
    ...one('vertexDistance', noun('vertex', 'The vertex distance'), fit.vertexDistance, VERTEX),
    ...one('pantoscopicTilt', noun('tilt', 'The pantoscopic tilt'), fit.pantoscopicTilt, TILT),
    ...one('faceForm', noun('face-form', 'The face form'), fit.faceForm, FACE_FORM),
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
            : outside(`${rx}.vertexDistance`, noun('vertex', 'The vertex distance'), vertex, VERTEX)),
        ]),
    ...fitFaults(fit ?? {}, `${path}.fit`),
    ...(typeof frame === 'object'
      ? [
          ...outside(`${path}.frame.a`, noun('a', 'A, the lens width,'), frame.a, {
            from: 30,
            to: 75,
            unit: 'mm',
          }),
          ...outside(`${path}.frame.b`, noun('b', 'B, the lens height,'), frame.b, {
            from: 18,
            to: 65,
            unit: 'mm',
          }),
          ...outside(`${path}.frame.dbl`, noun('dbl', 'DBL, the bridge,'), frame.dbl, {
            from: 8,
            to: 30,
            unit: 'mm',
          }),
        ]
      : []),
  ];
}
