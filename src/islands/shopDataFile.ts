/** The shop's data for the browser as one file for all pages; its name changes with its content. */
import { createHash } from 'node:crypto';
import { catalogue } from 'virtual:bevelbook/catalogue';
import { shopData } from '../configurator/shopData.ts';

export const shopDataText: string = JSON.stringify(shopData(catalogue));

/** The first part of the content's digest. */
export const shopDataDigest: string = createHash('sha256').update(shopDataText).digest('hex').slice(0, 16);
