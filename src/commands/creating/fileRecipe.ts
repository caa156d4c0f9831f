/** A recipe whose result is one new Markdown file in a folder of its kind. */
import { join } from 'node:path';
import { FOLDERS, type FolderKind, slug } from '../../catalogue/reading/folders.ts';
import { type FileKind, fileSchema } from '../../catalogue/schema/editorSchemas.ts';
import { commentedFile } from './commentedFile.ts';
import type { Answers, Known, Question, Recipe } from './recipe.ts';

type Singular<Plural> = Plural extends `${infer One}s` ? One : never;

interface FileRecipe extends Pick<Recipe, 'says' | 'questions' | 'value' | 'next'> {
  readonly kind: FileKind & Singular<FolderKind>;
  readonly folder: FolderKind;
  /** The text below the fields. */
  readonly body?: (answers: Answers) => string;
}

/** The id of the file: asked after the name that it is suggested from. */
function idQuestion({ folder }: FileRecipe, nameOf: string): Question {
  return {
    name: 'id',
    asks: `Its id: the name of the file in content/${FOLDERS[folder].folder}, and part of its address`,
    suggest: (answers) => orNull(slug(answers[nameOf] ?? '')),
  };
}

const orNull = (text: string) => (text === '' ? null : text);

/** The whole recipe: the first question names the thing, the second is its id. */
export function fileRecipe(recipe: FileRecipe): Recipe {
  const { kind, folder, body, value } = recipe;
  const [first, ...rest] = recipe.questions;
  if (first === undefined) throw new Error(`The recipe of a ${kind} asks nothing.`);
  const place = FOLDERS[folder];
  return {
    name: kind,
    says: recipe.says,
    questions: [first, idQuestion(recipe, first.name), ...rest],
    value,
    schema: (currency) => fileSchema(kind, currency),
    next: recipe.next,
    changes: (answers: Answers, known: Known) => {
      const path = `${place.folder}/${answers['id']}${place.ending}`;
      const text = commentedFile(kind, path, known.currency, value(answers, known), body?.(answers) ?? '');
      return [{ path: join(known.folder, path), text, fresh: true }];
    },
  };
}
