/** The keys under which pairs, and what is typed of an order, are held. Another form of what is held takes another number. */

export const ASIDE_KEY = 'bevelbook.aside.1';
export const BASKET_KEY = 'bevelbook.basket.1';
export const ORDER_KEY = 'bevelbook.order.1';
