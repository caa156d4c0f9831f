/** The lines of a receipt: goods in groups, each with the codes that the owner gave it. Amounts in minor units. */
import type { BillingCode } from '../catalogue/workroom.ts';
import { sumMinor } from '../money/minor.ts';
import { toMinusCylinder } from '../optics/prescription.ts';
import { prismAmount } from '../optics/prism.ts';
import type { QuoteLine } from '../pricing/line.ts';
import type { JudgedPair } from '../quote/judgePair.ts';
import type { EyeSituation } from '../rules/situation.ts';

/**
 * `prescribed`: lenses and what their strength adds, of a pair with a prescription. `extra`: tint, coating, and lenses
 * without one.
 */
export const RECEIPT_GROUPS = ['frame', 'prescribed', 'extra', 'credit', 'shipping', 'tax'] as const;
export type ReceiptGroup = (typeof RECEIPT_GROUPS)[number];

export interface ReceiptCode {
  readonly code: string;
  readonly label: string;
  readonly count: number;
}

export interface ReceiptLine {
  readonly group: ReceiptGroup;
  readonly pair: number | null;
  readonly label: string;
  readonly amount: number;
  readonly codes: readonly ReceiptCode[];
}

/** Lines of a price as a receipt has them, group by group. A code stands on the first line that it belongs to. */
export function receiptLines(
  priced: readonly QuoteLine[],
  pairs: readonly (JudgedPair | null)[],
  billing: readonly BillingCode[],
): ReceiptLine[] {
  const used = new Set<string>();
  const lines = priced.map((line): ReceiptLine => {
    const judged = line.pair === null ? null : (pairs[line.pair] ?? null);
    const codes = judged === null ? [] : codesOf(line, judged, billing);
    const fresh = codes.filter(({ code }) => !used.has(`${line.pair} ${code}`));
    for (const { code } of fresh) used.add(`${line.pair} ${code}`);
    return {
      group: groupOf(line, judged),
      pair: line.pair,
      label: line.label,
      amount: line.amount,
      codes: fresh,
    };
  });
  return lines.toSorted((a, b) => RECEIPT_GROUPS.indexOf(a.group) - RECEIPT_GROUPS.indexOf(b.group));
}

/** Sum of the lines of a group, minor units. */
export const groupTotal = (lines: readonly ReceiptLine[], group: ReceiptGroup): number =>
  sumMinor(lines.filter((line) => line.group === group).map(({ amount }) => amount));

function groupOf({ kind }: QuoteLine, judged: JudgedPair | null): ReceiptGroup {
  switch (kind) {
    case 'frame':
      return 'frame';
    case 'lenses':
    case 'surcharge':
      return judged?.situation.hasPrescription ? 'prescribed' : 'extra';
    case 'option':
      return 'extra';
    case 'promotion':
      return 'credit';
    default:
      return kind;
  }
}

type CodePart = 'frame' | 'lens' | 'material' | 'tint' | 'coating';

/** Which parts of a pair a line charges: ready-made lenses are one line for design and material. */
function partsOf({ kind, source }: QuoteLine, isStock: boolean): readonly CodePart[] {
  if (kind === 'frame') return ['frame'];
  if (kind === 'option') return [source.startsWith('lenses/tints/') ? 'tint' : 'coating'];
  if (kind !== 'lenses') return [];
  if (isStock) return ['lens', 'material'];
  return [source.startsWith('lenses/materials/') ? 'material' : 'lens'];
}

/** Which part a code is for: the most particular thing that it names. */
function codePart({ of, when }: BillingCode): CodePart {
  if (of === 'frame') return 'frame';
  if (when.tint !== undefined) return 'tint';
  if (when.coating !== undefined) return 'coating';
  return when.material !== undefined ? 'material' : 'lens';
}

function codesOf(line: QuoteLine, judged: JudgedPair, billing: readonly BillingCode[]): ReceiptCode[] {
  const parts = partsOf(line, judged.situation.stock !== null);
  return billing
    .filter((code) => parts.includes(codePart(code)))
    .flatMap((code) => {
      const count = code.of === 'frame' ? 1 : lensesWith(code, judged);
      return count === 0 ? [] : [{ code: code.code, label: code.label, count }];
    });
}

function lensesWith(code: BillingCode, { situation }: JudgedPair): number {
  return [situation.right, situation.left].filter((eye) => holds(code, situation, eye)).length;
}

function holds({ when }: BillingCode, situation: JudgedPair['situation'], eye: EyeSituation): boolean {
  const { design, material, tint, coating } = situation;
  const { sphereD, cylinderD } = toMinusCylinder(eye.ordered ?? { sphereD: 0, cylinderD: 0, axisDeg: 180 });
  const within = (range: { readonly from: number; readonly to: number } | undefined, value: number) =>
    range === undefined || (Math.abs(value) >= range.from - 1e-9 && Math.abs(value) <= range.to + 1e-9);
  const named = (list: readonly string[] | undefined, id: string | undefined) =>
    list === undefined || (id !== undefined && list.includes(id));
  return (
    named(when.design, design.kind) &&
    named(when.material, material.id) &&
    named(when.tint, tint?.kind) &&
    named(when.coating, coating?.id) &&
    within(when.sphereAbsD, sphereD) &&
    within(when.cylinderAbsD, cylinderD) &&
    within(when.addD, eye.orderedAddD) &&
    (when.prism === undefined || when.prism === prismAmount(eye.prescribed.prism) >= 0.005)
  );
}
