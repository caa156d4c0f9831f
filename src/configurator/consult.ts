/** Keeps a worksheet answered: each change of what is asked goes to the engine, and the newest answer comes back. */
import type { QuoteRequest } from '../quote/request.ts';
import type { Told } from './answering.ts';
import type { Compared } from './drawn.ts';
import { toFieldFault } from './fieldFault.ts';
import { isAsking } from './standing.ts';
import type { Worksheet } from './worksheet.ts';

/** The engine, in whatever thread it runs. */
export interface Engine {
  readonly ask: (serial: number, request: QuoteRequest) => void;
  /** Draws from now on, beside an option or alone. */
  readonly draw: (compared: Compared | null) => void;
  readonly listen: (heard: (told: Told) => void) => void;
}

const NO_ROWS = { right: [], left: [] };

/** Asks the engine now and at every change; what is said of an older request is dropped. Returns what ends it. */
export function consult(worksheet: Worksheet, engine: Engine): () => void {
  let serial = 0;
  let asked = '';
  engine.listen((told) => {
    if (told.serial === serial) take(worksheet, told);
  });
  const endAsking = worksheet.read.subscribe(({ request }) => {
    // Typing a blank, or a fault in another place, asks for nothing new.
    const text = JSON.stringify(request);
    if (text === asked) return;
    asked = text;
    serial += 1;
    engine.ask(serial, request);
  });
  const endDrawing = worksheet.drawn.subscribe((wanted) => {
    if (wanted !== undefined) engine.draw(wanted);
  });
  return () => {
    endAsking();
    endDrawing();
  };
}

function take(worksheet: Worksheet, told: Told): void {
  const { data, reports, drawings, advice, answer, priceFaults } = worksheet;
  if (told.kind === 'advice')
    advice.set({ kind: told.pair === null ? 'failed' : 'given', pair: told.pair, models: told.models });
  else if (told.kind === 'drawings') drawings.set({ view: told.view, compared: told.compared });
  else if (told.kind !== 'reply') {
    // What did not change is not drawn again.
    const same = JSON.stringify(reports.get()[told.kind]) === JSON.stringify(told.reports);
    if (!same) reports.set({ ...reports.get(), [told.kind]: told.reports });
  } else if (told.reply.ok) {
    const waits = !(told.reply.answer.pairs[0]?.findings ?? []).some(isAsking);
    priceFaults.set([]);
    advice.set({ kind: waits ? 'waiting' : 'none', pair: null, models: {} });
    answer.set(told.reply.answer);
  } else priceFaults.set(told.reply.faults.map((fault) => toFieldFault(data.words, fault, NO_ROWS)));
}
