/** Making an order's file and sending it, as one part for the browser to load. */
export { deliver } from './delivering.ts';
export { asText, makeFile, prepareMaking } from './madeFile.ts';
