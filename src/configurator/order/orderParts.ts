/** The makers of orders, in the parts that the order page loads one after the other. */

/** What the form needs to tell what is missing. */
export const loadOrderParts = () => import('../../order/atTheForm.ts');

/** What looks at pictures and PDFs. */
export const loadAttaching = () => import('../../order/attachment.ts');

/** What makes a file of it. */
export const loadMaking = () => import('../../order/atTheSending.ts');

/** What seals the file; the library behind it is loaded with the first one. */
export const loadSealing = () => import('../../order/seal.ts');

/** The maker of slips. */
export const loadSlip = () => import('../../order/slip.ts');

/** The reader's own limit of a file's size. */
export const loadSizes = () => import('../../order/plainBytes.ts');

export type OrderParts = Awaited<ReturnType<typeof loadOrderParts>>;
export type Making = Awaited<ReturnType<typeof loadMaking>>;
export type Unfinished = Parameters<OrderParts['missingOf']>[1];
export type Lack = ReturnType<OrderParts['missingOf']>[number];
export type OrderDraft = Parameters<Making['makeOrder']>[1];
/** What of a shop goes into an order. */
export type OrderingShop = Parameters<Making['makeOrder']>[0]['shop'];
export type Measurer = OrderDraft['pairs'][number]['measuredBy'];
export type Attachment = Exclude<ReturnType<Awaited<ReturnType<typeof loadAttaching>>['attach']>, string>;
