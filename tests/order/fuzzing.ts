/** What becomes of hostile files: every one is an order that the shop can judge, or is refused in sentences. */
import type { Order } from '../../src/order/order.ts';
import { readOrder } from '../../src/order/readOrder.ts';
import { REFUSALS, refusalText } from '../../src/order/refusal.ts';
import { makeKeys } from '../../src/order/seal.ts';
import { quote } from '../../src/quote/quote.ts';
import { jobOf } from '../../src/workroom/job.ts';
import { papersOf } from '../../src/workroom/papers.ts';
import { mutant } from './mutate.ts';
import { orderOf, request, shop } from './orders.ts';

const [pair] = request.pairs;
if (pair === undefined || pair.prescription === null)
  throw new Error('The sample has a pair with a prescription.');
const { right, left } = pair.prescription;
const withAdd = { ...pair.prescription, right: { ...right, add: 2 }, left: { ...left, add: 2 } };
const both = (mm: number) => ({ right: mm, left: mm });

/** Single vision, a progressive with prism, a bifocal, a sun pair without power, and two of them in one order. */
const requests = [
  request,
  {
    ...request,
    pairs: [
      {
        ...pair,
        prescription: { ...withAdd, left: { ...withAdd.left, prism: [{ amount: 1, base: 'in' as const }] } },
        lenses: {
          ...pair.lenses,
          use: 'all' as const,
          design: 'progressive-middle',
          material: 'thiourethane-1-60',
        },
      },
    ],
  },
  {
    ...request,
    pairs: [
      {
        ...pair,
        prescription: withAdd,
        fit: { ...pair.fit, segmentHeight: both(16) },
        lenses: { ...pair.lenses, use: 'all' as const, design: 'bifocal-28', material: 'standard-plastic' },
      },
      {
        ...pair,
        prescription: null,
        lenses: { ...pair.lenses, use: 'none' as const, design: 'plano', tint: 'grey-85' },
      },
    ],
  },
];

const orders: readonly Order[] = requests.map((asked) => orderOf(asked));

const keys = await makeKeys();

/** What one file of a seed came to: its refusals' codes, or `order`. Throws where anything but a clean answer came. */
export async function outcomeOf(seed: number): Promise<readonly string[]> {
  const bytes = await mutant(seed, orders, keys.recipient);
  const read = await readOrder(bytes, { identities: [keys.identity] });
  if (read.ok) {
    const reply = quote(shop, read.order.request);
    const sane = reply.ok ? Number.isSafeInteger(reply.answer.price.total) : reply.faults.length > 0;
    if (!sane) throw new Error(`Seed ${seed}: the shop's answer is neither a price nor a fault.`);
    // Papers take longer than all the rest: those of every fourth file do.
    if (seed % 4 === 0) checkPapers(read.order, seed);
    return ['order'];
  }
  const codes = read.refusals.map(({ code }) => code);
  const told = read.refusals.map((refusal) => refusalText(shop.words, refusal));
  const clean = codes.length > 0 && codes.length <= 9 && codes.every((code) => REFUSALS.includes(code));
  if (!clean || told.some((text) => text.length > 1000 || /undefined|\[object/.test(text)))
    throw new Error(`Seed ${seed}: not a clean refusal: ${codes.join(', ')}: ${told.join(' ')}`);
  return codes;
}

function checkPapers(order: Order, seed: number): void {
  const papers = papersOf(jobOf(order), shop);
  const odd = papers.find(({ html }) => /<(?:script|img|a|iframe)\b|undefined|NaN\b/.test(html));
  if (odd !== undefined) throw new Error(`Seed ${seed}: the paper ${odd.id} holds what none of ours does.`);
}
