/**
 * The engine as the worksheet talks to it: a request in; the answer, the drawings, the reports on all options and the
 * advice out, in the order in which they are waited for.
 */

import type { Offer } from '../catalogue/catalogue.ts';
import type { Frame } from '../catalogue/frame.ts';
import { sizeName } from '../catalogue/sizeNames.ts';
import type { PairAnswer, Reply } from '../quote/answer.ts';
import {
  type OptionReport,
  optionReporter,
  REPORTED_CHOICES,
  type ReportedChoice,
} from '../quote/options.ts';
import { quote } from '../quote/quote.ts';
import type { QuoteRequest } from '../quote/request.ts';
import type { DrawingsView } from '../quote/view/drawings.ts';
import type { Compared } from './drawn.ts';
import { isAsking } from './standing.ts';

/** What comes back for a request; `serial` tells which. */
export type Told =
  | { readonly serial: number; readonly kind: 'reply'; readonly reply: Reply }
  | { readonly serial: number; readonly kind: ReportedChoice; readonly reports: readonly OptionReport[] }
  | {
      readonly serial: number;
      readonly kind: 'drawings';
      readonly view: DrawingsView;
      readonly compared: Compared | null;
    }
  | {
      readonly serial: number;
      readonly kind: 'advice';
      /** null: what it takes did not load. */
      readonly pair: PairAnswer | null;
      /** What frames are called, by id, and by id and size: the page knows only its own. */
      readonly models: Readonly<Record<string, string>>;
    };

interface Ways {
  /** All frames that might be advised, this one among them, in the order of the shop. */
  readonly frames: () => Promise<readonly Frame[]>;
  /** Rest after the last request before the many options are judged, ms. */
  readonly quietMs?: number;
}

/** Shorter than the pause of a typist, ms. */
const QUIET_MS = 150;

const rest = (ms: number) => new Promise<void>((done) => setTimeout(done, ms));

/**
 * Answers requests in turn. Each is answered at once; what takes longer follows once no newer request has come for a
 * moment, in parts, and is left where one comes.
 */
export function answerer(offer: Offer, tell: (told: Told) => void, { frames, quietMs = QUIET_MS }: Ways) {
  let latest = 0;
  let asked: QuoteRequest | null = null;
  // undefined: nobody looks at drawings.
  let compared: Compared | null | undefined;

  async function draw(): Promise<void> {
    const [serial, request, beside] = [latest, asked, compared];
    if (request === null || beside === undefined) return;
    const { drawn } = await import('./drawn.ts');
    if (latest !== serial || compared !== beside) return;
    const view = drawn(offer, request, beside);
    if (view !== null) tell({ serial, kind: 'drawings', view, compared: beside });
  }

  async function advise(serial: number, request: QuoteRequest): Promise<void> {
    const loaded = await Promise.all([import('../quote/advice.ts'), frames()]).catch(() => null);
    if (latest !== serial) return;
    if (loaded === null) return tell({ serial, kind: 'advice', pair: null, models: {} });
    const [{ adviceSteps }, all] = loaded;
    const whole = { ...offer, frames: all };
    const reply = quote(whole, request);
    if (!reply.ok) return;
    const models = Object.fromEntries(
      all.flatMap(({ id, model, sizes }) => [
        [id, model],
        ...sizes.map((size) => [`${id} ${size.id}`, `${model} ${sizeName(size)}`]),
      ]),
    );
    const steps = adviceSteps(whole, request, reply.answer, 0);
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) return tell({ serial, kind: 'advice', pair: step.value, models });
      await rest(0);
      if (latest !== serial) return;
    }
  }

  async function ask(serial: number, request: QuoteRequest): Promise<void> {
    latest = serial;
    asked = request;
    const reply = quote(offer, request);
    tell({ serial, kind: 'reply', reply });
    await draw();
    await rest(quietMs);
    if (latest !== serial) return;
    const reportOn = optionReporter(offer, request, 0);
    for (const kind of REPORTED_CHOICES) {
      tell({ serial, kind, reports: reportOn(kind) });
      // Lets a newer request in.
      await rest(0);
      if (latest !== serial) return;
    }
    if (isAdvisable(reply)) await advise(serial, request);
  }

  return {
    ask,
    /** Draws from now on, beside an option or alone. */
    draw: (beside: Compared | null): Promise<void> => {
      compared = beside;
      return draw();
    },
  };
}

/** While an entry is asked for there is nothing to advise: no other choice would fill it in. */
const isAdvisable = (reply: Reply): boolean =>
  reply.ok && !(reply.answer.pairs[0]?.findings ?? []).some(isAsking);
