/** The prescription part of the worksheet becomes that of a request. */
import { isCivilDate } from '../catalogue/civilDate.ts';
import type { Eye } from '../optics/types.ts';
import { eyeFaults } from '../quote/plausible.ts';
import type { EyeRequest, PrescriptionRequest, PrismRequest } from '../quote/request.ts';
import { PRISM_ROWS } from './fields.ts';
import type { Reader } from './readField.ts';

/** The rows that were sent, in their order, so that a fault finds its row again. */
export interface ReadEye {
  readonly eye: EyeRequest;
  readonly prismRows: readonly number[];
}

const BASES = ['in', 'out', 'up', 'down'] as const;

/** One eye as typed; absent where nothing stands in the field. */
function readEye(reader: Reader, eye: Eye): ReadEye {
  const sphere = reader.number(`${eye}.sphere`, 'power');
  const cylinder = reader.number(`${eye}.cylinder`, 'power');
  const axis = reader.number(`${eye}.axis`, 'plain');
  const add = reader.number(`${eye}.add`, 'plain');
  const prisms = PRISM_ROWS.flatMap((row) => {
    const prism = readPrism(reader, eye, row);
    return prism === null ? [] : [{ row, prism }];
  });
  const balance = reader.text(`${eye}.balance`) === 'yes';
  return {
    eye: {
      ...(sphere === undefined ? {} : { sphere }),
      ...(cylinder === undefined ? {} : { cylinder }),
      ...(axis === undefined ? {} : { axis }),
      ...(add === undefined ? {} : { add }),
      ...(prisms.length === 0 ? {} : { prism: prisms.map(({ prism }) => prism) }),
      ...(balance ? { balance } : {}),
    },
    prismRows: prisms.map(({ row }) => row),
  };
}

function readPrism(reader: Reader, eye: Eye, row: (typeof PRISM_ROWS)[number]): PrismRequest | null {
  const amount = reader.number(`${eye}.prism${row}.amount`, 'plain');
  const base = BASES.find((name) => name === reader.text(`${eye}.prism${row}.base`));
  if (amount === undefined) {
    if (base !== undefined && reader.text(`${eye}.prism${row}.amount`) === '')
      reader.fault(`${eye}.prism${row}.amount`, 'base-without-prism');
    return null;
  }
  if (amount === 0) return null;
  if (base === undefined) {
    for (const fault of eyeFaults({ prism: [{ amount, base: 'in' }] }, ''))
      reader.implausible(`${eye}.prism${row}.amount`, fault);
    reader.fault(`${eye}.prism${row}.base`, 'prism-without-base');
    return null;
  }
  return { amount, base };
}

export interface ReadPrescription {
  readonly prescription: PrescriptionRequest;
  readonly prismRows: { readonly right: readonly number[]; readonly left: readonly number[] };
}

/** Both eyes with the vertex distance of the test and the date of issue. */
export function readPrescription(reader: Reader): ReadPrescription {
  const right = readEye(reader, 'right');
  const left = readEye(reader, 'left');
  const vertexDistance = reader.number('vertexTested', 'plain');
  const issued = reader.text('issued');
  if (issued !== '' && !isCivilDate(issued)) reader.fault('issued', 'not-a-date');
  return {
    prescription: {
      right: right.eye,
      left: left.eye,
      ...(vertexDistance === undefined ? {} : { vertexDistance }),
      ...(isCivilDate(issued) ? { issued } : {}),
    },
    prismRows: { right: right.prismRows, left: left.prismRows },
  };
}
