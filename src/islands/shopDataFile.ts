/** The shop's data for the browser as one file for all pages of a language. */
import { shopData } from '../configurator/shopData.ts';
import { filesByLanguage } from './dataFile.ts';

export const shopDataFile = await filesByLanguage((catalogue) => JSON.stringify(shopData(catalogue)));

/** Where the shop's data lies in a language. */
export const shopDataPath = (language: string): string => `/shop-data/${shopDataFile(language).digest}.json`;
