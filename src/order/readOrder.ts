/**
 * The one reader of order files. Every file is taken for hostile: what is not exactly an order is refused with its
 * reasons as data, and nothing here throws for what a file holds.
 */
import { failure, type Result, success } from '../optics/result.ts';
import { crossCheck } from './crossCheck.ts';
import { digestOf } from './digest.ts';
import { inspectJson, isCrowded } from './inspectJson.ts';
import { issueRefusals } from './issueRefusals.ts';
import { type JsonObject, MIGRATIONS, type Migrations, migrate } from './migrate.ts';
import { ORDER_VERSION, type Order, VERSION_KEY } from './order.ts';
import { orderSchema } from './orderSchema.ts';
import { plainBytes } from './plainBytes.ts';
import { briefly, type Refusal, refusal } from './refusal.ts';

export interface Opening {
  /** Private keys, any of which may fit. */
  readonly identities: readonly string[];
  /** Steps from older versions; the program's own unless given. */
  readonly migrations?: Migrations;
}

export type ReadOrder =
  | {
      readonly ok: true;
      readonly order: Order;
      /** Whether the file was sealed: if not, whoever saw it could read it. */
      readonly sealed: boolean;
      /** SHA-256 of the order before it was sealed. */
      readonly digest: string;
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** Reasons that are told of one file; the rest is counted. */
const MOST_REASONS = 8;

/** The order that a file holds, or every reason why it is none. */
export async function readOrder(bytes: Uint8Array, opening: Opening): Promise<ReadOrder> {
  const plain = await plainBytes(bytes, opening.identities);
  if (!plain.ok) return { ok: false, refusals: [plain.fault] };
  if (isCrowded(plain.value.bytes)) return { ok: false, refusals: [refusal('crowded')] };
  const order = readText(plain.value.text, opening.migrations ?? MIGRATIONS);
  if (!order.ok) return { ok: false, refusals: shortened(order.fault) };
  return {
    ok: true,
    order: order.value,
    sealed: plain.value.sealed,
    digest: await digestOf(plain.value.bytes),
  };
}

function shortened(refusals: readonly Refusal[]): readonly Refusal[] {
  if (refusals.length <= MOST_REASONS) return refusals;
  return [...refusals.slice(0, MOST_REASONS), refusal('more', { count: refusals.length - MOST_REASONS })];
}

function readText(text: string, migrations: Migrations): Result<Order, readonly Refusal[]> {
  const json = parseJson(text);
  if (!json.ok) return failure([json.fault]);
  const found = inspectJson(json.value);
  if (found !== null) return failure([found]);
  const current = toPresentVersion(json.value, migrations);
  if (!current.ok) return failure([current.fault]);
  const result = orderSchema.safeParse(current.value);
  if (!result.success)
    return failure(result.error.issues.flatMap((issue) => issueRefusals(issue, current.value)));
  const order = result.data as unknown as Order;
  const contradictions = crossCheck(order);
  return contradictions.length > 0 ? failure(contradictions) : success(order);
}

/** An object of JSON. A text that only lacks its end is told apart: it can be sent again. */
function parseJson(text: string): Result<JsonObject, Refusal> {
  try {
    const json: unknown = JSON.parse(text);
    const isObject = typeof json === 'object' && json !== null && !Array.isArray(json);
    return isObject && Object.hasOwn(json, VERSION_KEY)
      ? success(json as JsonObject)
      : failure(refusal('not-an-order', { key: VERSION_KEY }));
  } catch {
    const begins = /^\s*\{/.test(text);
    return failure(refusal(begins && !/\}\s*$/.test(text) ? 'cut-short' : 'not-json'));
  }
}

function toPresentVersion(json: JsonObject, migrations: Migrations): Result<JsonObject, Refusal> {
  const version = json[VERSION_KEY];
  const slots = { found: briefly(version), known: ORDER_VERSION };
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 0)
    return failure(
      refusal('malformed', { path: VERSION_KEY, expected: 'a whole number', found: slots.found }),
    );
  if (version > ORDER_VERSION) return failure(refusal('newer-version', slots));
  const current = migrate(json, version, ORDER_VERSION, migrations);
  return current === null ? failure(refusal('older-version', slots)) : success(current);
}
