/** Words that a worksheet's page loads once one of the things is used that need them. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { type Telling, tellingOf } from './telling.ts';

/** Addresses that the page gives with its form. */
export interface Addresses {
  readonly shop: string;
  readonly words: string;
}

/** Where the page says that its data lies. */
export function addressesOf(root: HTMLElement | null): Addresses {
  return { shop: root?.dataset['shop'] ?? '', words: root?.dataset['words'] ?? '' };
}

let loaded: Promise<Words> | null = null;

async function load(): Promise<Words> {
  const response = await fetch(addressesOf(document.getElementById('worksheet-root')).words);
  if (!response.ok) throw new Error(`The words answered ${response.status}.`);
  return response.json();
}

/** The words of the worksheet with those that were loaded. Rejects where they do not load; the next call tries again. */
export async function telling({ data }: Worksheet): Promise<Telling> {
  loaded ??= load();
  try {
    return tellingOf({ ...data.words, ...(await loaded) }, data.shop);
  } catch (error) {
    loaded = null;
    throw error;
  }
}
