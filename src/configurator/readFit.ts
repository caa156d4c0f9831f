/** The measurements of the worksheet become those of a request. */
import { fitFaults } from '../quote/plausible.ts';
import type { BothEyes, FitRequest } from '../quote/request.ts';
import type { Paired } from './fields.ts';
import type { Reader } from './readField.ts';

/** What was measured; a measurement of one eye alone is asked for, not guessed. */
export function readFit(reader: Reader): FitRequest {
  const single = reader.text('pd.mode') === 'both';
  const pd = single ? reader.number('pd.both', 'plain') : bothEyes(reader, 'pd');
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
