/** Data for the browser as files, one for each language that needs its own; a file's name changes with its content. */
import type { Catalogue } from '../catalogue/catalogue.ts';
import { spoken } from '../components/shopWords.ts';
import { contentDigest } from './contentDigest.ts';

export interface DataFile {
  readonly digest: string;
  readonly text: string;
}

/** The file of a text. */
export async function dataFile(text: string): Promise<DataFile> {
  return { digest: await contentDigest(text), text };
}

/** The file of each language, by the language. */
export async function filesByLanguage(
  textOf: (catalogue: Catalogue) => string,
): Promise<(language: string) => DataFile> {
  const files = new Map<string, DataFile>();
  for (const { catalogue } of spoken) files.set(catalogue.shop.language, await dataFile(textOf(catalogue)));
  return (language) => {
    const found = files.get(language);
    if (found === undefined) throw new Error(`The shop does not have the language ${language}.`);
    return found;
  };
}

/** What `getStaticPaths` of a route with a digest returns: each file once, though two languages may share it. */
export function filePaths(files: readonly DataFile[]) {
  const once = new Map(files.map((file) => [file.digest, file.text]));
  return [...once].map(([digest, text]) => ({ params: { digest }, props: { text } }));
}

/** The same for the file of each language. */
export const languageFilePaths = (fileOf: (language: string) => DataFile) =>
  filePaths(spoken.map(({ catalogue }) => fileOf(catalogue.shop.language)));
