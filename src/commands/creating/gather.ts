/** Gets an answer to each question of a recipe: from the flags, from the terminal, or what is suggested. */
import { listNames } from '../../catalogue/nearest.ts';
import { judgeAnswer } from './judgeAnswer.ts';
import type { Answers, Known, Question, Recipe } from './recipe.ts';

/** Somebody who is asked; null once nobody answers any more. */
export interface Asked {
  readonly ask: (prompt: string) => Promise<string | null>;
  readonly tell: (text: string) => void;
}

/** All answers, or what is wrong with those given and which are missing; or those that there were when asking ended. */
export type Gathered =
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly faults: readonly string[] }
  | { readonly ok: false; readonly left: Answers };

/**
 * Runs through the questions in their order. A given answer that is wrong is asked for again, or is a fault where
 * nobody is asked.
 */
export async function gather(
  recipe: Recipe,
  given: Answers,
  known: Known,
  asked: Asked | null,
  taken: (id: string) => boolean,
): Promise<Gathered> {
  const answers: Record<string, string> = {};
  const faults: string[] = [];
  const judge = (question: Question, answer: string) =>
    judgeAnswer(recipe, question, { ...answers, [question.name]: answer }, known) ??
    (question.name === 'id' && taken(answer) ? `There is a ${recipe.name} "${answer}" already.` : null);
  for (const question of recipe.questions) {
    if (question.applies?.(answers) === false) continue;
    const { name } = question;
    const suggested = question.suggest?.(answers, known) ?? null;
    let answer = given[name]?.trim() ?? (asked === null ? suggested : null);
    let fault = answer === null ? null : judge(question, answer);
    if (asked !== null && (answer === null || fault !== null)) {
      if (fault !== null) asked.tell(`  ${fault}`);
      const said = await ask(question, suggested, answers, judge, asked, known);
      if (said === undefined) return { ok: false, left: { ...without(given, name), ...answers } };
      [answer, fault] = [said, null];
    }
    if (answer === null)
      faults.push(`--${name} is missing: ${question.asks}${choicesOf(question, known, answers)}.`);
    else if (fault !== null) faults.push(`--${name}: ${fault}`);
    answers[name] = answer ?? '';
  }
  const strange = Object.keys(given).filter((name) => !(name in answers));
  faults.push(...strange.map((name) => `--${name} does not go with the other answers.`));
  return faults.length === 0 ? { ok: true, answers } : { ok: false, faults };
}

/** The answers but for one, which is wrong or was not given. */
const without = (answers: Answers, wrong: string): Answers =>
  Object.fromEntries(Object.entries(answers).filter(([name]) => name !== wrong));

const choicesOf = ({ choices }: Question, known: Known, answers: Answers) =>
  choices === undefined ? '' : ` (${listNames(choices(known, answers))})`;

/** What was typed without quotes round it, which a file would need and an answer does not. */
const bare = (line: string): string => line.trim().replace(/^(["'“”])(.*)["'“”]$/, '$2');

/** Asks until the answer will do; undefined once nobody answers. */
async function ask(
  question: Question,
  suggested: string | null,
  answers: Answers,
  judge: (question: Question, answer: string) => string | null,
  { ask: put, tell }: Asked,
  known: Known,
): Promise<string | undefined> {
  const usual = suggested === null ? '' : ` [${suggested === '' ? 'none' : suggested}]`;
  for (;;) {
    const line = await put(`${question.asks}${choicesOf(question, known, answers)}${usual}: `);
    if (line === null) return undefined;
    const answer = bare(line) === '' ? (suggested ?? '') : bare(line);
    const fault = judge(question, answer);
    if (fault === null) return answer;
    tell(`  ${fault}`);
  }
}
