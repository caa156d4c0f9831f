/** What the shape of an order cannot show: that its parts go together, its figures are possible, its files are files. */
import { pairFaults } from '../quote/plausible.ts';
import { attachmentType } from './attachment.ts';
import { fromBase64 } from './base64.ts';
import { MOST_ATTACHED_BYTES } from './limits.ts';
import type { Attachment, Order } from './order.ts';
import { briefly, type Refusal, refusal } from './refusal.ts';

/** Everything that does not go together in an order of the right shape. */
export function crossCheck(order: Order): readonly Refusal[] {
  return [...pairCounts(order), ...implausible(order), ...attachments(order)];
}

function pairCounts({ request, pairs, shown }: Order): Refusal[] {
  const count = request.pairs.length;
  if (pairs.length !== count || shown.pairs.length !== count)
    return [refusal('pairs-differ', { asked: count, told: pairs.length, shown: shown.pairs.length })];
  const stray = shown.price.lines.findIndex(({ pair }) => pair !== null && (pair < 0 || pair >= count));
  const prescription = pairs.findIndex(
    (pair, at) => (pair.prescription === null) !== (request.pairs[at]?.prescription === null),
  );
  return [
    ...malformed(stray, 'shown.price.lines', 'pair', 'the index of a pair of this order, or null'),
    ...malformed(prescription, 'pairs', 'prescription', 'null exactly where the request has none'),
  ];
}

function malformed(at: number, list: string, key: string, expected: string): Refusal[] {
  return at < 0 ? [] : [refusal('malformed', { path: `${list}.${at}.${key}`, expected, found: 'another' })];
}

function implausible({ request }: Order): Refusal[] {
  return request.pairs
    .flatMap((pair, at) => pairFaults(pair, `request.pairs.${at}`))
    .map(({ path, message, expected, found }) =>
      refusal('implausible', { path, message, expected, found: briefly(found) }),
    );
}

function attachments({ pairs }: Order): Refusal[] {
  const found = pairs.flatMap((pair, at) =>
    (pair.prescription?.attachments ?? []).map((one, index) => ({
      one,
      path: `pairs.${at}.prescription.attachments.${index}`,
    })),
  );
  const letters = found.reduce((sum, { one }) => sum + one.base64.length, 0);
  if (letters > Math.ceil(MOST_ATTACHED_BYTES / 3) * 4 + 4 * found.length)
    return [
      refusal('attachment', {
        path: 'pairs',
        name: 'all together',
        expected: `${MOST_ATTACHED_BYTES} bytes`,
      }),
    ];
  return found.flatMap(({ one, path }) => wrongAttachment(one, path));
}

function wrongAttachment({ name, type, base64 }: Attachment, path: string): Refusal[] {
  const bytes = fromBase64(base64);
  if (bytes !== null && attachmentType(bytes) === type) return [];
  return [refusal('attachment', { path, name: briefly(name), expected: type })];
}
