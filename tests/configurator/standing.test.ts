import { expect, it } from 'vitest';
import { say } from '../../src/catalogue/words.ts';
import type { Entries } from '../../src/configurator/fields.ts';
import { readEntries } from '../../src/configurator/readEntries.ts';
import { isShopsWork, SHOPS_WORK } from '../../src/configurator/shopsWork.ts';
import { standingOf } from '../../src/configurator/standing.ts';
import { sentenceOf, totalLabel } from '../../src/islands/sentence.ts';
import { quote } from '../../src/quote/quote.ts';
import { RULES } from '../../src/rules/rules.ts';
import { DATE, frameOf, shop } from './shop.ts';

function stand(entries: Entries, id = 'sanderling') {
  const { request, faults } = readEntries(entries, { frame: frameOf(id), data: shop, date: DATE });
  const reply = quote(shop, request);
  if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
  return standingOf(faults, reply.answer);
}

const telling = { t: (key: string, slots = {}) => say(shop.words, `worksheet.${key}`, slots), data: shop };
const EYES = { 'right.sphere': '-4.00', 'left.sphere': '-4.00', 'pd.right': '31', 'pd.left': '31' };

it('lists every fault and every need with the field that it leads to', () => {
  const { kind, faults, needs } = stand({ 'right.sphere': '-225', 'left.sphere': '-3.3', 'pd.right': '31' });
  expect(kind).toBe('mend');
  expect(faults.map(({ field }) => field)).toEqual(['right.sphere', 'left.sphere']);
  // What the engine lacks only because of them is not asked for on top.
  expect(needs.map(({ field }) => field)).toEqual(['pd.left']);
});

it('asks on for what is typed the first time, and finds fault with it once it was left', () => {
  const { request, faults } = readEntries(
    { ...EYES, 'right.sphere': '-3.3', 'left.cylinder': '+' },
    { frame: frameOf('sanderling'), data: shop, date: DATE },
  );
  const reply = quote(shop, request);
  if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
  const asked = standingOf(faults, reply.answer, () => true);
  expect(asked.kind).toBe('needs');
  expect(asked.faults).toEqual([]);
  // The sphere as before its first sign; the cylinder is unfinished, so no verdict is given without it.
  expect(asked.needs.map(({ field }) => field)).toEqual(['left.cylinder', 'right.sphere']);
  expect(asked.needs[1]).toEqual(stand({ ...EYES, 'right.sphere': '' }).needs[0]);
  expect(standingOf(faults, reply.answer, (field) => field === 'left.cylinder').kind).toBe('mend');
});

it('asks for the height that the design needs, at its field', () => {
  const more = { 'right.add': '2.00', 'left.add': '2.00', use: 'all' };
  expect(stand({ ...EYES, ...more }).needs.map(({ field }) => field)).toEqual([
    'fittingHeight.right',
    'fittingHeight.left',
  ]);
  expect(stand({ ...EYES, ...more, design: 'bifocal-28' }).needs.map(({ field }) => field)).toEqual([
    'segmentHeight.right',
    'segmentHeight.left',
  ]);
});

it('has no plain total while the pair is not judged or cannot be made', () => {
  const label = (entries: Entries, id?: string) => totalLabel(telling, stand(entries, id));
  expect(label(EYES)).toBe('Total');
  expect(label({})).toBe('Price as chosen, not judged yet');
  expect(label({ ...EYES, 'right.sphere': '4' })).toBe('Price as chosen, not judged yet');
  expect(label({ ...EYES, wearer: 'child' }, 'stint')).toBe('Price as chosen, cannot be made so');
});

it('keeps what the shop sees to by itself apart from what the shopper has to weigh', () => {
  for (const rule of SHOPS_WORK) expect(RULES.map(({ id }) => id)).toContain(rule);
  const measured = {
    'fittingHeight.right': '22',
    'fittingHeight.left': '22',
    vertexTested: '12',
    issued: '2026-06-01',
  };
  const plain = stand({ ...EYES, ...measured, 'right.sphere': '-2.00', 'left.sphere': '-2.00' });
  expect(plain.kind).toBe('makeable');
  expect(plain.findings.filter(isShopsWork).map(({ level }) => level)).toEqual(['note']);
  // A strong lens on an estimated outline is never plainly makeable.
  const strong = stand({
    ...EYES,
    ...measured,
    'right.sphere': '-6.00',
    'left.sphere': '-6.00',
    material: 'episulfide-1-74',
    coating: 'ar',
  });
  expect(strong.kind).not.toBe('makeable');
  const onlyOurs = { ...strong, kind: 'care' as const, findings: strong.findings.filter(isShopsWork) };
  expect(sentenceOf(telling, onlyOurs)).toBe(
    'We can make this pair. Before we cut, we check one thing more.',
  );
});
