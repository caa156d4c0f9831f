/** The shop's data for the browser as one file for all pages; its name changes with its content. */
import { catalogue } from 'virtual:bevelbook/catalogue';
import { shopData } from '../configurator/shopData.ts';

export const shopDataText: string = JSON.stringify(shopData(catalogue));

const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(shopDataText));

/** The first part of the content's SHA-256, as hexadecimal digits. */
export const shopDataDigest: string = Array.from(new Uint8Array(digest).subarray(0, 8), (byte) =>
  byte.toString(16).padStart(2, '0'),
).join('');
