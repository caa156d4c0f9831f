/** What is wrong with one answer: said by the list of choices or by the schema of the file that it goes into. */
import { listNames, nearest } from '../../catalogue/nearest.ts';
import { explainIssue } from '../../catalogue/reading/issueFault.ts';
import { ID_FORM } from '../../catalogue/schema/fields.ts';
import { parseWith } from '../../catalogue/schema/parse.ts';
import { type Answers, type Known, named, type Question, type Recipe } from './recipe.ts';

/** Null where nothing is wrong with the answer to `question`; the answers before it are known. */
export function judgeAnswer(
  recipe: Recipe,
  question: Question,
  answers: Answers,
  known: Known,
): string | null {
  const answer = answers[question.name] ?? '';
  if (answer === '') return question.suggest?.(answers, known) === '' ? null : 'Expected an answer.';
  if (question.name === 'id' && !ID_FORM.test(answer))
    return `Expected small letters a-z, digits and hyphens, found "${answer}".`;
  const fault =
    question.choices !== undefined
      ? judgeChoice(question, answer, question.choices(known, answers))
      : question.field === undefined
        ? null
        : judgeField(recipe, question.field, answers, known);
  return fault ?? question.refuses?.(answers, known) ?? null;
}

function judgeChoice({ many }: Question, answer: string, choices: readonly string[]): string | null {
  const strange = (many ? named(answer) : [answer]).find((one) => !choices.includes(one));
  if (strange === undefined) return null;
  if (choices.length === 0) return `There is nothing to choose from, found "${strange}".`;
  const meant = nearest(strange, choices);
  const hint = meant === null ? '' : ` Did you mean ${meant}?`;
  return `Expected ${listNames(choices)}, found "${strange}".${hint}`;
}

/** Whether one path begins with the other. */
const within = (path: readonly unknown[], field: readonly unknown[]) =>
  field.every((part, at) => path[at] === part);

function judgeField(recipe: Recipe, field: readonly (string | number)[], answers: Answers, known: Known) {
  const raw = recipe.value(answers, known);
  const parsed = parseWith(recipe.schema(known.currency), raw);
  const issue = parsed.ok ? undefined : parsed.issues.find(({ path }) => within(path, field));
  if (issue === undefined) return null;
  const { expected, received, hint } = explainIssue(issue, raw, null);
  const said = `Expected ${expected}, found ${received}. ${hint}`;
  // Quotes are for files.
  return said
    .replaceAll(', in quotes', '')
    .replaceAll(/, without quotes(?: and(?= without))?/g, ',')
    .replaceAll(/,\./g, '.');
}
