/** What the form of an order needs while it is filled in, as one part for the browser to load. */
export {
  MOST_ADDRESS_LINES,
  MOST_ATTACHED_BYTES,
  MOST_ATTACHMENTS,
  MOST_LINE_LETTERS,
  MOST_PROSE_LETTERS,
  WORN_BASE_CURVES_D,
} from './limits.ts';
export { missingOf } from './missing.ts';
export { isOrderNumber, NUMBER_BYTES, orderNumber, showNumber } from './number.ts';
export { fillPayment } from './payment.ts';
export { plainText } from './text.ts';
