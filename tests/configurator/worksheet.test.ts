import { describe, expect, it } from 'vitest';
import { answerer, type Told } from '../../src/configurator/answering.ts';
import { applyChanges, undoChanges } from '../../src/configurator/changing.ts';
import { consult } from '../../src/configurator/consult.ts';
import type { Field } from '../../src/configurator/fields.ts';
import { packFrame, unpackFrame } from '../../src/configurator/framePack.ts';
import { openingOf } from '../../src/configurator/opening.ts';
import { optionRows } from '../../src/configurator/optionRows.ts';
import { shopData } from '../../src/configurator/shopData.ts';
import { createWorksheet } from '../../src/configurator/worksheet.ts';
import { quoteWithAdvice } from '../../src/quote/advice.ts';
import { optionReports, REPORTED_CHOICES } from '../../src/quote/options.ts';
import { quote } from '../../src/quote/quote.ts';
import { withChanges } from '../../src/quote/withChanges.ts';
import { DATE, frameOf, shop } from './shop.ts';

/** A worksheet with the engine in the same thread, as the browser has it in another. */
function openSheet(id: string) {
  const frame = { ...frameOf(id), story: '' };
  const data = shopData(shop);
  const sheet = createWorksheet({ frame, data, opening: openingOf(shop, frame, DATE), date: DATE });
  let hear: (told: Told) => void = () => {};
  const engine = answerer({ ...data, frames: [frame] }, (told) => hear(structuredClone(told)), {
    frames: async () => shop.frames.map(packFrame).map(unpackFrame),
    quietMs: 0,
  });
  let settled: Promise<void> = Promise.resolve();
  const stop = consult(sheet, {
    ask: (serial, request) => {
      settled = engine.ask(serial, structuredClone(request));
    },
    draw: (compared) => {
      settled = engine.draw(compared);
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
    for (const kind of REPORTED_CHOICES)
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
    expect(sheet.standing.get().kind).toBe('makeable');
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

  it('advises with the data of the browser as the whole shop does', async () => {
    const { sheet, settle } = openSheet('whimbrel');
    sheet.fill({ ...MYOPE, size: '50-20', 'right.sphere': '-9.50', 'left.sphere': '-9.50', wearer: 'child' });
    expect(sheet.advice.get().kind).not.toBe('given');
    await settle();
    const { request } = sheet.read.get();
    const reply = quoteWithAdvice(shop, request);
    expect(sheet.advice.get()).toMatchObject({ kind: 'given', pair: reply.ok && reply.answer.pairs[0] });
  });

  it('advises nothing while an entry is still asked for', async () => {
    const { sheet, settle } = openSheet('whimbrel');
    sheet.enter('right.sphere', '-9.50');
    await settle();
    expect(sheet.advice.get()).toMatchObject({ kind: 'none', pair: null });
  });

  it('makes the changes of advice as the engine means them, and takes them back', async () => {
    for (const id of ['whimbrel', 'sanderling', 'dunlin']) {
      const { sheet, settle } = openSheet(id);
      const { size: _, ...entries } = MYOPE;
      sheet.fill({ ...entries, 'right.sphere': '-8', 'left.sphere': '-8' });
      await settle();
      const before = sheet.read.get().request;
      const [pair] = before.pairs;
      const given = sheet.advice.get().pair;
      const found = [...(given?.alternatives ?? []).map(({ changes }) => changes)];
      expect(found).not.toEqual([]);
      for (const changes of found) {
        applyChanges(sheet, changes, 'named');
        expect(sheet.read.get().request.pairs).toEqual([pair && withChanges(shop, pair, changes)]);
        sheet.enter('left.sphere', '-7.75');
        sheet.enter('left.sphere', '-8');
        expect(sheet.applied.get()?.names).toBe('named');
        undoChanges(sheet);
        expect(sheet.read.get().request).toEqual(before);
        expect(sheet.applied.get()).toBeNull();
      }
    }
  });

  it('empties heights that were measured in another size, and brings them back with it', () => {
    const { sheet } = openSheet('sanderling');
    sheet.fill({ ...MYOPE, 'fittingHeight.right': '22', 'fittingHeight.left': '21.5' });
    const before = sheet.entries.get();
    applyChanges(sheet, [{ kind: 'material', value: 'polycarbonate' }], 'Polycarbonate');
    expect(sheet.read.get().request.pairs[0]?.fit?.fittingHeight).toEqual({ right: 22, left: 21.5 });
    expect(sheet.applied.get()?.heights).toBe(false);
    undoChanges(sheet);
    applyChanges(sheet, [{ kind: 'size', value: '48-19' }], '48-19');
    expect(sheet.read.get().request.pairs[0]?.fit?.fittingHeight).toBeUndefined();
    expect(sheet.applied.get()?.heights).toBe(true);
    sheet.enter('fittingHeight.right', '20');
    undoChanges(sheet);
    expect(sheet.entries.get()).toEqual(before);
  });

  it('forgets how to take advice back once another choice was made', () => {
    const { sheet } = openSheet('sanderling');
    applyChanges(sheet, [{ kind: 'material', value: 'polycarbonate' }], 'Polycarbonate');
    sheet.enter('material', 'standard-plastic');
    undoChanges(sheet);
    expect(sheet.chosen.material.get()).toBe('standard-plastic');
  });

  it('draws what is asked for beside an option, and nothing before anybody looks', async () => {
    const { sheet, settle } = openSheet('sanderling');
    sheet.fill(MYOPE);
    await settle();
    expect(sheet.drawings.get()).toBeNull();
    sheet.drawing.set(true);
    await settle();
    expect(sheet.drawings.get()?.view.section?.right.compared).toBeNull();
    sheet.pointed.set({ kind: 'material', id: 'thiourethane-1-67' });
    await settle();
    const section = sheet.drawings.get()?.view.section;
    const { request } = sheet.read.get();
    const [thin] = optionReports(shop, request, 0, 'material').filter(({ id }) => id === 'thiourethane-1-67');
    expect(
      Math.max(section?.right.compared?.thickest.mm ?? 0, section?.left.compared?.thickest.mm ?? 0),
    ).toBe(thin?.thickestMm);
    sheet.pointed.set({ kind: 'material', id: sheet.chosen.material.get() });
    await settle();
    expect(sheet.drawings.get()?.compared).toBeNull();
  });
});
