/** Makes what a recipe is for: answers gathered, tried against the whole shop, written only where nothing is wrong. */
import { existsSync } from 'node:fs';
import type { ContentFault } from '../../catalogue/fault.ts';
import { gatherContent } from '../../catalogue/gatherContent.ts';
import { type ContentFolder, loadFolder } from '../../catalogue/load.ts';
import { printFaults } from '../../catalogue/printFaults.ts';
import { valueAt } from '../../catalogue/schema/parse.ts';
import { currencyDigits } from '../../money/currency.ts';
import { tryChanges } from '../tryChanges.ts';
import { type Change, writeAll } from '../writeAll.ts';
import { type Asked, gather } from './gather.ts';
import type { Answers, Known, Question, Recipe } from './recipe.ts';

/** Ends the command without a change; its message says why. */
export class Refused extends Error {}

/** The shop in the content folder `root` as far as it can be read. */
export function knownOf({ files, name }: ContentFolder, root: string): Known {
  const { content } = gatherContent(files, name);
  const code = valueAt(content.shop?.origin.raw, ['currency']);
  const digits = typeof code === 'string' ? currencyDigits(code) : null;
  const currency = { code: digits === null ? "the shop's currency" : String(code), digits };
  return { folder: root, currency, content };
}

/** A word of a command as a shell reads it. */
export const quoted = (text: string): string =>
  /^[\w./#@-]+$/.test(text) && !text.startsWith('#') ? text : `'${text.replaceAll("'", `'\\''`)}'`;

/** The command that gives all answers again, as a shell reads it. */
function commandOf({ name }: Recipe, root: string, answers: Answers): string {
  const flags = Object.entries(answers).flatMap(([flag, text]) =>
    text === '' ? [] : [`--${flag}=${quoted(text)}`],
  );
  return ['npm run new --', name, ...flags, `--shop=${quoted(root)}`].join(' ');
}

/** Questions whose answers the faults are about; null where one is about something else. */
function blamed({ questions, list }: Recipe, faults: readonly ContentFault[]): Set<string> | null {
  const names = faults.map(({ path }) => {
    const inside = list === undefined ? path : path[0] === list ? path.slice(2) : null;
    const about = ({ field }: Question) => field?.every((part, at) => inside?.[at] === part);
    return questions.find(about)?.name;
  });
  return names.includes(undefined) ? null : new Set(names as string[]);
}

/** Writes what the recipe makes into the content folder `root`; what is told afterwards. Throws Refused. */
export async function create(
  recipe: Recipe,
  root: string,
  given: Answers,
  asked: Asked | null,
): Promise<string> {
  const folder = loadFolder(root);
  if (folder.files.length === 0) throw new Refused(printFaults(folder.faults));
  const known = knownOf(folder, root);
  const taken = (id: string) => {
    const made = recipe.changes({ ...given, id }, known);
    return !(made instanceof Error) && made.some(({ path, fresh }) => fresh && existsSync(path));
  };
  for (let now = given; ; ) {
    const gathered = await gather(recipe, now, known, asked, taken);
    if (!gathered.ok && 'left' in gathered)
      throw new Refused(
        `\nNothing was written. To go on from here:\n${commandOf(recipe, root, gathered.left)}`,
      );
    if (!gathered.ok) throw new Refused(`${gathered.faults.join('\n')}\nNothing was written.`);
    const { answers } = gathered;
    const changes = recipe.changes(answers, known);
    const nothing = `Nothing was written. Your answers, to be given again with what is wrong changed:\n${commandOf(recipe, root, answers)}`;
    if (changes instanceof Error) throw new Refused(`${changes.message}\n${nothing}`);
    const { faults, before } = tryChanges(folder, root, changes);
    if (faults.length === 0) {
      writeAll(changes);
      return told(recipe, answers, known, changes, before);
    }
    const wrong = asked === null ? null : blamed(recipe, faults);
    if (asked === null || wrong === null) throw new Refused(`${printFaults(faults)}\n${nothing}`);
    asked.tell(printFaults(faults));
    now = Object.fromEntries(Object.entries(answers).filter(([name]) => !wrong.has(name)));
  }
}

/** What was written, and what is left to do. */
function told(recipe: Recipe, answers: Answers, known: Known, changes: readonly Change[], before: number) {
  const still = `The shop had faults before, and has them still (${before}): npm run check`;
  return [
    ...changes.map(({ path, fresh }) => `${path} is ${fresh ? 'written' : 'changed'}.`),
    'What is left to do:',
    ...recipe.next(answers, known).map((step) => `  - ${step}`),
    ...(before > 0 ? [still] : []),
  ].join('\n');
}
