/** The measurements of the worksheet become those of a request. */
import type { BothEyes, FitRequest } from '../quote/request.ts';
import { EYES, type Paired } from './fields.ts';
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
  const other = EYES.find((eye) => reader.text(`${name}.${eye}`) === '');
  if (other !== undefined && (right !== undefined || left !== undefined))
    reader.fault(`${name}.${other}`, 'other-eye');
  return undefined;
}
