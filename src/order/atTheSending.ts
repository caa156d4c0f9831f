/** What makes a file of a filled in form, as one part for the browser to load. Sealing is loaded by itself. */
export { digestOf } from './digest.ts';
export { mailLink } from './mail.ts';
export { makeOrder, orderBytes, orderFileName } from './makeOrder.ts';
