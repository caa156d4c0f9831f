import { describe, expect, it } from 'vitest';
import { answerer, type Told } from '../../src/configurator/answering.ts';
import { consult } from '../../src/configurator/consult.ts';
import type { Field } from '../../src/configurator/fields.ts';
import { openingOf } from '../../src/configurator/opening.ts';
import { optionRows } from '../../src/configurator/optionRows.ts';
import { shopData } from '../../src/configurator/shopData.ts';
import { createWorksheet } from '../../src/configurator/worksheet.ts';
import { LENS_CHOICES, optionReports } from '../../src/quote/options.ts';
import { quote } from '../../src/quote/quote.ts';
import { DATE, frameOf, shop } from './shop.ts';

/** A worksheet with the engine in the same thread, as the browser has it in another. */
function openSheet(id: string) {
  const frame = { ...frameOf(id), story: '' };
  const data = shopData(shop);
  const sheet = createWorksheet({ frame, data, opening: openingOf(shop, frame, DATE), date: DATE });
  let hear: (told: Told) => void = () => {};
  const answer = answerer({ ...data, frames: [frame] }, (told) => hear(structuredClone(told)), 0);
  let settled: Promise<void> = Promise.resolve();
  const stop = consult(sheet, {
    ask: (serial, request) => {
      settled = answer(serial, structuredClone(request));
    },
    listen: (heard) => {
      hear = heard;
    },
  });
  return { sheet, stop, settle: () => settled };
}

const MYOPE: Partial<Record<Field, string>> = {
  size: '51-19',
  'right.sphere': '-3.25',
  'right.cylinder': '-0.75',
  'right.axis': '170',
  'left.sphere': '\u22122,75',
  'pd.right': '31.5',
  'pd.left': '32',
};

describe('createWorksheet', () => {
  it('answers with the data of the browser as the whole shop does', async () => {
    const { sheet, settle } = openSheet('sanderling');
    sheet.fill(MYOPE);
    await settle();
    const { request } = sheet.read.get();
    const reply = quote(shop, request);
    expect(reply).toMatchObject({ ok: true, answer: sheet.answer.get() });
    for (const kind of LENS_CHOICES)
      expect(sheet.reports.get()[kind]).toEqual(optionReports(shop, request, 0, kind));
  });

  it('opens as an untouched worksheet is answered', async () => {
    const { sheet, settle } = openSheet('knot');
    const before = JSON.stringify([sheet.answer.get(), sheet.reports.get()]);
    await settle();
    expect(JSON.stringify([sheet.answer.get(), sheet.reports.get()])).toBe(before);
  });

  it('raises no alarm before anything is entered: it says what is needed', () => {
    for (const frame of shop.frames) {
      const { sheet } = openSheet(frame.id);
      expect(sheet.standing.get().kind, frame.id).toBe('needs');
      expect(sheet.shownFaults.get()).toEqual([]);
    }
  });

  it('marks before any entry only what does not go together anyway', () => {
    const { sheet } = openSheet('sanderling');
    const rows = optionRows(sheet.data, 'material', sheet.reports.get().material);
    for (const { id, mark } of rows) {
      const design = shop.designs.find((one) => one.id === sheet.read.get().choices.design);
      if (design?.materials.includes(id)) expect(mark).not.toBe('fits');
    }
    expect(rows.some(({ mark }) => mark === 'open')).toBe(true);
  });

  it('shows a fault once its field was left, and takes it back when it is mended', () => {
    const { sheet } = openSheet('sanderling');
    sheet.enter('right.sphere', '-3.3');
    expect(sheet.shownFaults.get()).toEqual([]);
    sheet.leave('right.sphere');
    expect(sheet.shownFaults.get()).toMatchObject([{ field: 'right.sphere' }]);
    expect(sheet.standing.get().kind).toBe('mend');
    expect(sheet.entries.get()['right.sphere']).toBe('-3.3');
    sheet.enter('right.sphere', '-3.25');
    expect(sheet.shownFaults.get()).toEqual([]);
  });

  it('drops what is said of an older request', async () => {
    const { sheet, settle } = openSheet('sanderling');
    sheet.fill(MYOPE);
    sheet.enter('right.sphere', '-9');
    sheet.enter('right.sphere', '-3.25');
    await settle();
    expect(quote(shop, sheet.read.get().request)).toMatchObject({ answer: sheet.answer.get() });
  });

  it('asks to confirm an add of one eye and does not refuse it', async () => {
    const { sheet, settle } = openSheet('sanderling');
    sheet.fill({
      ...MYOPE,
      'right.add': '2.00',
      use: 'all',
      'fittingHeight.right': '22',
      'fittingHeight.left': '22',
    });
    await settle();
    const { kind, findings } = sheet.standing.get();
    expect(findings).toContainEqual(expect.objectContaining({ rule: 'adds-differ', level: 'caution' }));
    expect(kind).toBe('care');
  });

  it('tells of an exemption that does not hold where the pair goes', async () => {
    const { sheet, settle } = openSheet('sanderling');
    sheet.fill({ ...MYOPE, destination: 'CA', exemption: 'prescribed' });
    await settle();
    expect(sheet.shownFaults.get()).toMatchObject([{ field: 'exemption' }]);
    sheet.enter('destination', 'US-ME');
    await settle();
    expect(sheet.standing.get().kind).toBe('care');
  });

  it('is as before the first entry when it is cleared', async () => {
    const { sheet, settle } = openSheet('sanderling');
    const before = JSON.stringify(sheet.answer.get());
    sheet.fill(MYOPE);
    sheet.kept.set(true);
    await settle();
    sheet.clear();
    await settle();
    expect(sheet.entries.get()).toEqual({});
    expect(sheet.kept.get()).toBe(false);
    expect(JSON.stringify(sheet.answer.get())).toBe(before);
  });
});
