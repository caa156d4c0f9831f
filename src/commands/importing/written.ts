/** Numbers and prices as spreadsheets write them, brought to the form of the shop's files. */
import type { Currency } from '../../catalogue/schema/money.ts';
import { priced } from '../creating/recipe.ts';

/** `1.149,50` or `1,149.50` as `1149.50`; a text of another form stays as it is, and is then refused as it stands. */
export function plainNumber(text: string, decimal: '.' | ','): string {
  const [point, group] = decimal === ',' ? [',', '\\.'] : ['\\.', ','];
  const form = new RegExp(`^([-−]?)(\\d{1,3}(?:${group}\\d{3})+|\\d+)(?:${point}(\\d+))?$`);
  const [, sign = '', whole = '', fraction] = form.exec(text.trim().replace(/[\s\u00a0\u202f]/g, '')) ?? [];
  if (whole === '') return text;
  return `${sign === '' ? '' : '-'}${whole.replace(/\D/g, '')}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** A price with all digits of the currency; a sign or code of the currency beside it is left out. */
export function plainPrice(text: string, decimal: '.' | ',', currency: Currency): string {
  const bare = text.replace(
    new RegExp(`^(?:\\p{Sc}|${currency.code})|(?:\\p{Sc}|${currency.code})$`, 'gu'),
    '',
  );
  return priced(plainNumber(bare, decimal), currency);
}
