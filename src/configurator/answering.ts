/** The engine as the worksheet talks to it: a request in, the answer and then the reports on all options out. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Reply } from '../quote/answer.ts';
import { LENS_CHOICES, type LensChoice, type OptionReport, optionReports } from '../quote/options.ts';
import { quote } from '../quote/quote.ts';
import type { QuoteRequest } from '../quote/request.ts';

/** What comes back for a request; `serial` tells which. */
export type Told =
  | { readonly serial: number; readonly kind: 'reply'; readonly reply: Reply }
  | { readonly serial: number; readonly kind: LensChoice; readonly reports: readonly OptionReport[] };

/** Rest after the last request before the many options are judged, ms: shorter than the pause of a typist. */
const QUIET_MS = 150;

const rest = (ms: number) => new Promise<void>((done) => setTimeout(done, ms));

/**
 * Answers requests in turn. Each is answered at once; its options are judged one kind after another once no newer
 * request has come for a moment, and left where one comes.
 */
export function answerer(offer: Offer, tell: (told: Told) => void, quietMs = QUIET_MS) {
  let latest = 0;
  return async (serial: number, request: QuoteRequest): Promise<void> => {
    latest = serial;
    tell({ serial, kind: 'reply', reply: quote(offer, request) });
    await rest(quietMs);
    for (const kind of LENS_CHOICES) {
      if (latest !== serial) return;
      tell({ serial, kind, reports: optionReports(offer, request, 0, kind) });
      // Lets a newer request in.
      await rest(0);
    }
  };
}
