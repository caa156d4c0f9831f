/** The measurements of the worksheet become those of a request. */
import { fitFaults } from '../quote/plausible.ts';
import type { BothEyes, FitRequest } from '../quote/request.ts';
import { type Entries, type Field, type Paired, textOf } from './fields.ts';
import type { Reader } from './readField.ts';
import { readNumber } from './readNumber.ts';

/** What was measured; a measurement of one eye alone is asked for, not guessed. */
export function readFit(reader: Reader): FitRequest {
  const single = reader.text('pd.mode') === 'both';
  const pd = single
    ? reader.number('pd.both', 'plain')
    : (halvedPd(reader.entries) ?? bothEyes(reader, 'pd'));
  const nearPd = single ? reader.number('nearPd.both', 'plain') : bothEyes(reader, 'nearPd');
  const fittingHeight = bothEyes(reader, 'fittingHeight');
  const segmentHeight = bothEyes(reader, 'segmentHeight');
  const vertexDistance = reader.number('vertexWorn', 'plain');
  const pantoscopicTilt = reader.number('tilt', 'plain');
  const faceForm = reader.number('faceForm', 'plain');
  return {
    ...(pd === undefined ? {} : { pd }),
    ...(nearPd === undefined ? {} : { nearPd }),
    ...(fittingHeight === undefined ? {} : { fittingHeight }),
    ...(segmentHeight === undefined ? {} : { segmentHeight }),
    ...(vertexDistance === undefined ? {} : { vertexDistance }),
    ...(pantoscopicTilt === undefined ? {} : { pantoscopicTilt }),
    ...(faceForm === undefined ? {} : { faceForm }),
  };
}

/** The one PD that stands halved before each eye; undefined where they were measured. */
export function halvedPd(entries: Entries): number | undefined {
  const [both, ...halves] = ['pd.both', 'pd.right', 'pd.left'].map((field) => {
    const reading = readNumber(textOf(entries, field as Field));
    return reading.kind === 'number' ? reading.value : undefined;
  });
  return both && halves.every((half) => half === both / 2) ? both : undefined;
}

function bothEyes(reader: Reader, name: Paired): BothEyes | undefined {
  const right = reader.number(`${name}.right`, 'plain');
  const left = reader.number(`${name}.left`, 'plain');
  if (right !== undefined && left !== undefined) return { right, left };
  const alone = right ?? left;
  if (alone === undefined) return undefined;
  const [eye, other] = left === undefined ? (['right', 'left'] as const) : (['left', 'right'] as const);
  // Held against its range by itself: the other eye, still to come, would hide a slip.
  for (const fault of fitFaults({ [name]: { right: alone, left: alone } }, '').slice(0, 1))
    reader.implausible(`${name}.${eye}`, fault);
  if (reader.text(`${name}.${other}`) === '') reader.fault(`${name}.${other}`, 'other-eye');
  return undefined;
}
