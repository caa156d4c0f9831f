/** The keys under which pairs are held. Another form of what is held takes another number. */

export const ASIDE_KEY = 'bevelbook.aside.1';
export const BASKET_KEY = 'bevelbook.basket.1';
