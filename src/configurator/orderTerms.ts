/** The terms of an order as the engine is asked with them. */
import type { QuoteRequest } from '../quote/request.ts';
import { type Entries, textOf } from './fields.ts';

/** Destination, exemption and codes of a request; what is left empty is the shop's own, or none. */
export function orderTerms(terms: Entries): Pick<QuoteRequest, 'destination' | 'taxExemption' | 'codes'> {
  const [destination, exemption] = [textOf(terms, 'destination'), textOf(terms, 'exemption')];
  const codes = textOf(terms, 'codes')
    .split(/[\s,;]+/)
    .filter((code) => code !== '');
  return {
    ...(destination === '' ? {} : { destination }),
    ...(exemption === '' ? {} : { taxExemption: exemption }),
    ...(codes.length === 0 ? {} : { codes }),
  };
}
