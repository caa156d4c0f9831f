/** Keeps a worksheet answered: each change of what is asked goes to the engine, and the newest answer comes back. */
import type { QuoteRequest } from '../quote/request.ts';
import type { Told } from './answering.ts';
import { toFieldFault } from './fieldFault.ts';
import type { Worksheet } from './worksheet.ts';

/** The engine, in whatever thread it runs. */
export interface Engine {
  readonly ask: (serial: number, request: QuoteRequest) => void;
  readonly listen: (heard: (told: Told) => void) => void;
}

const NO_ROWS = { right: [], left: [] };

/** Asks the engine now and at every change; what is said of an older request is dropped. Returns what ends it. */
export function consult(worksheet: Worksheet, engine: Engine): () => void {
  let serial = 0;
  let asked = '';
  engine.listen((told) => {
    if (told.serial !== serial) return;
    if (told.kind !== 'reply')
      worksheet.reports.set({ ...worksheet.reports.get(), [told.kind]: told.reports });
    else if (told.reply.ok) {
      worksheet.priceFaults.set([]);
      worksheet.answer.set(told.reply.answer);
    } else worksheet.priceFaults.set(told.reply.faults.map((fault) => toFieldFault(fault, NO_ROWS)));
  });
  return worksheet.read.subscribe(({ request }) => {
    // Typing a blank, or a fault in another place, asks for nothing new.
    const text = JSON.stringify(request);
    if (text === asked) return;
    asked = text;
    serial += 1;
    engine.ask(serial, request);
  });
}
