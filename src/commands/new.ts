/**
 * `npm run new -- KIND`: makes a frame, a lens option, a promotion, a page and whatever else an owner adds. It asks on
 * the terminal for what the flags do not say, tries the result against the whole shop and writes it only where nothing
 * is wrong. Exit status 0 when it is written, 1 when nothing is.
 */
import { parseArgs } from 'node:util';
import { loadFolder } from '../catalogue/load.ts';
import { listNames, nearest } from '../catalogue/nearest.ts';
import { create, knownOf, Refused } from './creating/create.ts';
import type { Answers, Known, Recipe } from './creating/recipe.ts';
import { RECIPES } from './creating/recipes.ts';
import { openTerminal } from './terminal.ts';

const KINDS = RECIPES.map(({ name }) => name);
const WIDE = Math.max(...KINDS.map((kind) => kind.length));

const USAGE = `npm run new -- KIND     asks what it needs, and writes a file with comments
npm run new -- KIND --help    the flags that answer instead

${RECIPES.map(({ name, says }) => `  ${name.padEnd(WIDE)}  ${says}`).join('\n')}

An outline from a tracer's own file: npm run import -- outline FILE
  --shop FOLDER   another content folder
  --yes           take what is suggested and ask nothing`;

function usageOf({ name, says, questions }: Recipe, known: Known): string {
  const flags = questions.map(({ name: flag, asks, choices }) => {
    const among = choices === undefined ? '' : ` (${listNames(choices(known, {}))})`;
    return `  --${flag.padEnd(14)} ${asks}${among}`;
  });
  return `npm run new -- ${name}: ${says}\n${flags.join('\n')}\n  --shop FOLDER    another content folder\n  --yes            take what is suggested and ask nothing`;
}

/** The recipe of a kind, or what is to be told of one that there is not. */
function recipeOf(kind: string): Recipe | string {
  const meant = nearest(kind, KINDS);
  const hint = meant === null ? '' : ` Did you mean ${meant}?`;
  const strange = `Expected a kind: ${listNames(KINDS, KINDS.length)}; found "${kind}".${hint}`;
  return RECIPES.find(({ name }) => name === kind) ?? strange;
}

/** The recipe that was named, or is when it is asked for. */
async function chosen(word: string | undefined, terminal: () => Terminal): Promise<Recipe> {
  const named = word === undefined ? undefined : recipeOf(word);
  if (typeof named === 'string') throw new Refused(`${named}\n\n${USAGE}`);
  if (named !== undefined) return named;
  for (;;) {
    const kind = await terminal().ask(`What is new (${listNames(KINDS, KINDS.length)}): `);
    if (kind === null) throw new Refused(`\n${USAGE}`);
    const recipe = recipeOf(kind.trim());
    if (typeof recipe !== 'string') return recipe;
    terminal().tell(`  ${recipe}`);
  }
}

function readLine(recipe: Recipe, words: readonly string[]) {
  const flags = recipe.questions.map(({ name }) => [name, { type: 'string' }] as const);
  const options = {
    ...Object.fromEntries(flags),
    shop: { type: 'string', default: 'content' },
    yes: { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  } as const;
  try {
    const { shop, yes, help, ...given } = parseArgs({ args: [...words], options }).values;
    return { shop: String(shop), yes: yes === true, help: help === true, given: given as Answers };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new Refused(`${reason}\nThe flags: npm run new -- ${recipe.name} --help`);
  }
}

type Terminal = ReturnType<typeof openTerminal>;

async function run(terminal: () => Terminal): Promise<void> {
  const words = process.argv.slice(2);
  const isNamed = words[0] !== undefined && !words[0].startsWith('-');
  if (!isNamed && words.length > 0) {
    if (words.includes('--help')) return console.log(USAGE);
    throw new Refused(`Expected the kind first, found ${words[0]}.\n\n${USAGE}`);
  }
  const recipe = await chosen(words[0], terminal);
  const line = readLine(recipe, words.slice(1));
  if (line.help) console.log(usageOf(recipe, knownOf(loadFolder(line.shop), line.shop)));
  else console.log(await create(recipe, line.shop, line.given, line.yes ? null : terminal()));
}

const opened: Terminal[] = [];

try {
  await run(() => {
    const [terminal = openTerminal()] = opened;
    opened[0] = terminal;
    return terminal;
  });
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
} finally {
  for (const terminal of opened) terminal.close();
}
