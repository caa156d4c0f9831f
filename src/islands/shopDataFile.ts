/** The shop's data for the browser as one file for all pages; its name changes with its content. */
import { catalogue } from 'virtual:bevelbook/catalogue';
import { shopData } from '../configurator/shopData.ts';
import { contentDigest } from './contentDigest.ts';

export const shopDataText: string = JSON.stringify(shopData(catalogue));

export const shopDataDigest: string = await contentDigest(shopDataText);
