/** The frames for the list's engine as one file for all pages of a language. */
import { sendFrame } from '../../quote/frameListData.ts';
import { filesByLanguage } from '../dataFile.ts';

export const frameDataFile = await filesByLanguage(({ frames }) => JSON.stringify(frames.map(sendFrame)));

/** Where the list's frames lie in a language. */
export const frameDataPath = (language: string): string =>
  `/frames-data/${frameDataFile(language).digest}.json`;
