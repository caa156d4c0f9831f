/** Orders in which all frames are shown, besides the shop's own by collection; each has a page. */
export const ORDERS = ['mounting', 'width', 'price'] as const;
export type Order = (typeof ORDERS)[number];
