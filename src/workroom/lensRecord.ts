/**
 * The lens order as text records of the trade's data interchange, `LABEL=right;left`, with the outline. Labels are
 * from memory, so conformity with a standard is not claimed; `_BASIS` says so in the record itself. What another
 * machine wrote into the job's record and this file does not know is kept as it was.
 */

import { toMinusCylinder } from '../optics/prescription.ts';
import { prismToPolar } from '../optics/prismBase.ts';
import type { RecordEntry, TraceRecord } from '../optics/trace.ts';
import { recordNumber } from '../optics/traceRecord.ts';
import { measuredEntries, writeTraceRecord } from '../optics/traceWrite.ts';
import type { Eye } from '../optics/types.ts';
import type { JudgedPair } from '../quote/judgePair.ts';
import type { VerificationPower } from './inspection/measured.ts';
import type { LensOrder, LensOrderEye } from './lensOrder.ts';

export type { VerificationPower } from './inspection/measured.ts';

const EYES = ['right', 'left'] as const;

/** A text as one field: what would end the field or the line becomes a space. ASCII; what is not is `?`. */
const field = (text: string): string =>
  text
    .replace(/[;=\p{Cc}]+/gu, ' ')
    .replace(/[^\x20-\x7e]/g, '?')
    .trim()
    .slice(0, 60);

type Value = (eye: LensOrderEye) => number | null;

/**
 * The record of a pair's lens order, CR LF. `number` is the job's. `known` is the record that a tracer or supplier
 * sent for this job: its outlines take the place of ours, its other entries stay.
 */
export function lensRecordText(
  number: string,
  judged: JudgedPair,
  order: LensOrder,
  known: TraceRecord | null = null,
): string {
  const { frame } = judged.resolved;
  const own = [
    { label: 'JOB', fields: [field(number)] },
    { label: 'DO', fields: [order.right && order.left ? 'B' : order.right ? 'R' : 'L'] },
    ...powerEntries(order),
    ...placeEntries(judged, order),
    ...measuredEntries(frame.right, frame.left, frame.situation.dblMm),
    ...lensEntries(judged, order),
    { label: '_BASIS', fields: ['labels from memory', 'conformity not claimed'] },
  ];
  const written = new Set(own.map(({ label }) => label));
  const kept = (known?.entries ?? []).filter(({ label }) => !written.has(label));
  const ours = EYES.map((side) => ({ side, type: 'F', mode: 'equal' as const, outline: frame[side] }));
  const traces = known !== null && known.traces.length > 0 ? known.traces : ours;
  return writeTraceRecord({ entries: [...own, ...kept], traces });
}

function pair(order: LensOrder, label: string, digits: number, value: Value): RecordEntry {
  const fields = EYES.map((eye) => {
    const lens = order[eye];
    const found = lens && value(lens);
    return found === null ? '?' : (Number(found.toFixed(digits)) + 0).toFixed(digits);
  });
  return { label, fields };
}

function powerEntries(order: LensOrder): RecordEntry[] {
  const power = ({ worked }: LensOrderEye) => toMinusCylinder(worked.ordered.power);
  const prism = ({ worked }: LensOrderEye) => prismToPolar(worked.ground);
  return [
    pair(order, 'SPH', 2, (eye) => power(eye).sphereD),
    pair(order, 'CYL', 2, (eye) => power(eye).cylinderD),
    pair(order, 'AX', 0, (eye) => power(eye).axisDeg),
    pair(order, 'ADD', 2, ({ worked }) => worked.ordered.addD),
    pair(order, 'PRVM', 2, (eye) => prism(eye).amount),
    pair(order, 'PRVA', 0, (eye) => prism(eye).baseDeg),
    pair(order, '_THINNINGINCLUDED', 2, ({ worked }) => -worked.thinning.y),
  ];
}

function placeEntries({ situation, resolved }: JudgedPair, order: LensOrder): RecordEntry[] {
  const height = (yMm: number) => yMm + situation.frame.bMm / 2;
  const both = (label: string, text: string) => ({ label, fields: [text] });
  const { tiltDeg, frame } = situation;
  const wornMm = resolved.request.fit?.vertexDistance ?? null;
  return [
    pair(order, 'IPD', 2, ({ worked }) => worked.pdMm),
    pair(order, 'NPD', 2, ({ worked }) => worked.nearPdMm),
    pair(order, 'OCHT', 2, ({ worked }) => height((worked.cross ?? worked.reference).yMm)),
    pair(order, 'SEGHT', 2, ({ worked }) => worked.segmentTop && height(worked.segmentTop.yMm)),
    both('BVD', wornMm === null ? '?' : wornMm.toFixed(1)),
    both('PANTO', tiltDeg.toFixed(1)),
    both('ZTILT', frame.faceFormDeg.toFixed(1)),
  ];
}

function lensEntries({ situation }: JudgedPair, order: LensOrder): RecordEntry[] {
  const { design, material, tint, coating, frame } = situation;
  const twice = (label: string, text: string) => ({ label, fields: [field(text), field(text)] });
  const kind = design.corridor !== null ? 'PR' : design.segment !== null ? 'BI' : 'SV';
  const edge = { full: '1', drilled: '2', grooved: '3' }[frame.mounting];
  return [
    { label: 'FCRV', fields: [frame.frameCurveD === null ? '?' : frame.frameCurveD.toFixed(2)] },
    { label: 'ETYP', fields: [edge] },
    twice('LNAM', design.name),
    twice('LTYPE', kind),
    twice('LIND', material.ne.toFixed(3)),
    twice('_LMATERIAL', material.name),
    twice('TIND', tint?.name ?? ''),
    twice('_COATING', coating?.name ?? ''),
    pair(order, 'FRNT', 2, ({ baseCurveD }) => baseCurveD),
    pair(order, 'DIA', 1, ({ diameterMm }) => diameterMm),
    pair(order, 'CTHICK', 2, ({ centreThicknessMm }) => centreThicknessMm),
    pair(order, 'MINCTR', 2, ({ leastCentreMm }) => leastCentreMm),
    pair(order, 'MINEDG', 2, ({ leastEdgeMm }) => leastEdgeMm),
  ];
}

/** The verification powers that a supplier's record states for an eye; null where it states none. */
export function verificationIn(record: TraceRecord, eye: Eye): VerificationPower | null {
  const number = (label: string) => recordNumber(record, label, eye);
  const sphereD = number('INSSPH');
  if (sphereD === null) return null;
  const amount = number('INSPRVM');
  const baseDeg = ((number('INSPRVA') ?? 0) * Math.PI) / 180;
  return {
    power: toMinusCylinder({ sphereD, cylinderD: number('INSCYL') ?? 0, axisDeg: number('INSAX') || 180 }),
    addD: number('INSADD'),
    prism: amount === null ? null : { x: amount * Math.cos(baseDeg), y: amount * Math.sin(baseDeg) },
  };
}
