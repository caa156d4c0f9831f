/** Order files as a broken disk, a curious neighbour or an enemy leaves them: the same ones for the same seed. */
import { orderBytes } from '../../src/order/makeOrder.ts';
import type { Order } from '../../src/order/order.ts';
import { seal } from '../../src/order/seal.ts';

/** A number from 0 to below `count`. */
type Draw = (count: number) => number;

/** A small generator of even spread (a linear congruence with its low bits dropped), enough to choose by. */
function drawFrom(seed: number): Draw {
  let state = BigInt(seed) * 2n + 1n;
  return (count) => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number(state >> 33n) % count;
  };
}

const pick = <T>(draw: Draw, list: readonly T[]): T => list[draw(list.length)] as T;

/** Values that somebody who means harm puts where others stood. */
const HOSTILE: readonly unknown[] = [
  null,
  true,
  '',
  '0',
  0,
  -1,
  0.1,
  1e308,
  -1e308,
  Number.MAX_SAFE_INTEGER + 2,
  [],
  {},
  [[]],
  '1e999',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  '{total}',
  '{{constructor}}',
  '__proto__',
  '../../../etc/passwd',
  '\u0000',
  '\u202e',
  '\ud800',
  'x'.repeat(6000),
  'javascript:alert(1)',
  '2026-02-30',
  '9999-12-31',
  [null, null, null],
  { __proto__: null, toString: 1 },
];

const KEYS = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'then',
  'valueOf',
  '',
  '0',
  'extra',
  'balance',
  'base',
];

// biome-ignore lint/suspicious/noExplicitAny: any JSON
type Json = any;

/** Every map and list of a JSON value. */
function places(value: Json, found: Json[] = []): Json[] {
  if (typeof value !== 'object' || value === null) return found;
  found.push(value);
  for (const inner of Object.values(value)) places(inner, found);
  return found;
}

/** One change to JSON, in place. */
function changeJson(root: Json, draw: Draw): void {
  const all = places(root);
  const place = pick(draw, all);
  const key = pick(draw, Object.keys(place).length > 0 ? Object.keys(place) : ['0']);
  const value = place[key];
  const put = (other: unknown, at = key) =>
    Object.defineProperty(place, at, { value: other, enumerable: true, configurable: true, writable: true });
  const changes = [
    () => put(pick(draw, HOSTILE)),
    () => (Array.isArray(place) ? place.splice(draw(place.length + 1), 1) : delete place[key]),
    () => put(pick(draw, HOSTILE), pick(draw, KEYS)),
    () => put(structuredClone(pick(draw, all))),
    () => put([value]),
    () =>
      put(typeof value === 'number' ? value * pick(draw, [-1, 0.1, 10, 1e6, 1.0001]) : JSON.stringify(value)),
    () => put(typeof value === 'number' ? value + pick(draw, [-0.25, 0.25, 1, -1, 0.001]) : value),
    () => (Array.isArray(place) ? place.push(...structuredClone(place)) : put(value, `${key} `)),
  ];
  pick(draw, changes)();
}

/** A small change to a number of the request: what comes of it is often still an order. */
function nudge(root: Json, draw: Draw): void {
  const held = places(root.request).filter((place) =>
    Object.values(place).some((value) => typeof value === 'number'),
  );
  const place = pick(draw, held);
  const keys = Object.keys(place).filter((key) => typeof place[key] === 'number');
  place[pick(draw, keys)] += pick(draw, [-5, -1, -0.25, 0.25, 1, 5]);
}

/** One change to bytes. */
function changeBytes(bytes: Uint8Array, draw: Draw): Uint8Array {
  const at = draw(bytes.length + 1);
  const end = Math.min(bytes.length, at + 1 + draw(40));
  const parts = [
    () => [bytes.subarray(0, at)],
    () => [bytes.subarray(at)],
    () => [bytes.subarray(0, at), bytes.subarray(end)],
    () => [bytes.subarray(0, end), bytes.subarray(at)],
    () => [bytes.subarray(0, at), Uint8Array.from([draw(256)]), bytes.subarray(at + 1)],
    () => [bytes.subarray(0, at), Uint8Array.from([draw(256), draw(256)]), bytes.subarray(at)],
    () => [
      bytes.subarray(0, at),
      new TextEncoder().encode(pick(draw, ['"', '{', ']', ',', '\\', '1e999', 'null'])),
      bytes.subarray(at),
    ],
  ];
  return new Uint8Array(Buffer.concat(pick(draw, parts)()));
}

function repeated<T>(value: T, times: number, change: (value: T) => T): T {
  return times === 0 ? value : repeated(change(value), times - 1, change);
}

/**
 * The file of a seed: one of the orders, changed one to four times as JSON, as bytes, or as bytes after it was sealed
 * to the recipient; one in eight JSON changes is sealed as well, so that what is inside a good seal is hostile too.
 */
export async function mutant(seed: number, orders: readonly Order[], recipient: string): Promise<Uint8Array> {
  const draw = drawFrom(seed);
  const order = pick(draw, orders);
  const times = 1 + draw(4);
  const kind = draw(8);
  if (kind === 0)
    return repeated(await seal(orderBytes(order), [recipient]), times, (bytes) => changeBytes(bytes, draw));
  if (kind <= 2) return repeated(orderBytes(order), times, (bytes) => changeBytes(bytes, draw));
  const json = structuredClone(order);
  const change = kind === 4 ? nudge : changeJson;
  for (let time = 0; time < times; time += 1) change(json, draw);
  const bytes = new TextEncoder().encode(JSON.stringify(json));
  return kind === 3 ? seal(bytes, [recipient]) : bytes;
}
