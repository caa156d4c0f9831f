/** What the command line of an import says, and asks on the terminal for what it lacks or has wrong. */
import { accessSync, constants } from 'node:fs';
import { parseArgs } from 'node:util';
import { listNames, nearest } from '../../catalogue/nearest.ts';
import { ID_FORM } from '../../catalogue/schema/fields.ts';
import { quoted, Refused } from '../creating/create.ts';
import type { Asked } from '../creating/gather.ts';

const KINDS = ['frames', 'prices', 'outline'];

export const USAGE = `npm run import -- frames FILE.csv --mapping FILE.yaml   new frames, a size and a colourway a row
npm run import -- prices FILE.csv --mapping FILE.yaml   new prices of frames and lens options, by id
npm run import -- outline FILE --id ID                  a traced outline from a tracer's record
  --dry-run       show what would change, and write nothing
  --eye left      take the trace of the left lens (outline)
  --shop FOLDER   another content folder`;

/** The words as they were typed. Throws Refused. */
export function readLine() {
  const options = {
    mapping: { type: 'string' },
    id: { type: 'string' },
    eye: { type: 'string', default: 'right' },
    shop: { type: 'string', default: 'content' },
    'dry-run': { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  } as const;
  try {
    const { values, positionals } = parseArgs({ options, allowPositionals: true });
    const [kind, file, ...more] = positionals;
    if (more.length > 0) throw new Error(`Expected a kind and a file, found ${more[0]} as well.`);
    return { ...values, kind, file };
  } catch (error) {
    throw new Refused(`${error instanceof Error ? error.message : error}\n\n${USAGE}`);
  }
}

/** The command line; of `mapping` and `id` the one that the kind needs is there once it was completed. */
export type Line = ReturnType<typeof readLine>;

interface Need {
  readonly name: 'kind' | 'file' | 'mapping' | 'id';
  readonly asks: string;
  readonly applies: (line: Line) => boolean;
  /** What is wrong with an answer; null where nothing is. */
  readonly judge: (answer: string) => string | null;
}

function unreadable(path: string): string | null {
  try {
    accessSync(path, constants.R_OK);
    return null;
  } catch (error) {
    return `${path} cannot be read: ${error instanceof Error ? error.message : error}`;
  }
}

function strangeKind(kind: string): string | null {
  if (KINDS.includes(kind)) return null;
  const meant = nearest(kind, KINDS);
  return `Expected ${listNames(KINDS)}, found "${kind}".${meant === null ? '' : ` Did you mean ${meant}?`}`;
}

const badId = (id: string) =>
  ID_FORM.test(id) ? null : `Expected small letters a-z, digits and hyphens, found "${id}".`;

const NEEDS: readonly Need[] = [
  { name: 'kind', asks: `What comes in (${listNames(KINDS)})`, applies: () => true, judge: strangeKind },
  { name: 'file', asks: 'From which file', applies: () => true, judge: unreadable },
  {
    name: 'mapping',
    asks: 'The file that says which column is which field',
    applies: ({ kind }) => kind !== 'outline',
    judge: unreadable,
  },
  { name: 'id', asks: 'Name of the outline', applies: ({ kind }) => kind === 'outline', judge: badId },
];

/** The command that says the same again. */
function commandOf({ kind, file, mapping, id, eye, shop, 'dry-run': dry }: Line): string {
  const flags = Object.entries({ mapping, id, shop, eye: eye === 'right' ? undefined : eye });
  return [
    'npm run import --',
    ...[kind, file].flatMap((word) => (word === undefined ? [] : quoted(word))),
    ...flags.flatMap(([flag, text]) => (text === undefined ? [] : `--${flag}=${quoted(text)}`)),
    ...(dry ? ['--dry-run'] : []),
  ].join(' ');
}

/** The line with whatever it lacked; where nobody answers any more, Refused with the command so far is thrown. */
export async function complete(line: Line, terminal: () => Asked): Promise<Line> {
  let whole = line;
  for (const { name, asks, applies, judge } of NEEDS) {
    if (!applies(whole)) continue;
    for (;;) {
      const { [name]: given, ...rest } = whole;
      const fault = given === undefined ? null : judge(given);
      if (given !== undefined && fault === null) break;
      if (fault !== null) terminal().tell(`  ${fault}`);
      const answer = await terminal().ask(`${asks}: `);
      const lacks = name === 'kind' || name === 'file' ? `The ${name}` : `--${name}`;
      if (answer === null)
        throw new Refused(
          `\n${fault ?? `${lacks} is missing: ${asks}.`}\n\n${USAGE}\n\nTo go on from here:\n${commandOf({ ...rest, [name]: undefined } as Line)}`,
        );
      whole = { ...rest, [name]: answer.trim() } as Line;
    }
  }
  return whole;
}
