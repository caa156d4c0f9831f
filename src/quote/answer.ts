/** What the one door answers. Amounts in minor units; figures rounded to 0.01 mm, 0.1 g, 0.01 D, 0.01 prism dioptre. */
import type { QuoteLine } from '../pricing/line.ts';
import type { Figures, Level } from '../rules/finding.ts';
import type { PackageChange } from './change.ts';
import type { Fault } from './fault.ts';

export const VERDICTS = ['makeable', 'care', 'refused'] as const;
export type Verdict = (typeof VERDICTS)[number];

export interface Finding {
  readonly rule: string;
  readonly level: Level;
  readonly eye: 'right' | 'left' | 'both';
  readonly figures: Figures;
  readonly message: string;
  /** Null: no single change of this shop clears it, or it is a note. */
  readonly remedy: Remedy | null;
}

/** The nearest change in this shop that clears a finding. */
export interface Remedy {
  readonly change: PackageChange;
  readonly message: string;
}

/** Powers in D; prism in prism dioptres towards a base in degrees of the front view. */
export interface PowerAnswer {
  readonly sphere: number;
  readonly cylinder: number;
  readonly axis: number;
  readonly prism: { readonly amount: number; readonly baseDeg: number } | null;
  readonly add: number | null;
}

export interface LensAnswer {
  readonly ordered: PowerAnswer;
  /** Power to order so that the wearer gets what was prescribed; null where it is the same. */
  readonly compensated: PowerAnswer | null;
  readonly baseCurveD: number;
  readonly centreThicknessMm: number;
  readonly governedBy: string;
  readonly edgeThicknessMm: {
    readonly thickest: { readonly mm: number; readonly atDeg: number };
    readonly thinnest: { readonly mm: number; readonly atDeg: number };
  };
  readonly beyondRimMm: number;
  readonly massG: number;
  readonly decentrationMm: { readonly in: number; readonly up: number };
  readonly blank: {
    readonly kind: 'stock' | 'surfaced';
    readonly neededMm: number;
    readonly usedMm: number | null;
    readonly spareMm: number | null;
  };
  /** Why the thickness is an estimate; null where it is exact. */
  readonly estimate: string | null;
}

export interface PairAnswer {
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  readonly right: LensAnswer | null;
  readonly left: LensAnswer | null;
  readonly alternatives: readonly Alternative[];
  /** The smallest set of changes that makes a refused package one that can be made; null where it is none. */
  readonly wayOut: WayOut | null;
}

/** A package that is better in one way, and can be made. */
export interface Alternative {
  readonly aim: string;
  readonly changes: readonly PackageChange[];
  /** Millimetres, grams, degrees, percent or minor units, as the aim has it. */
  readonly from: number;
  readonly to: number;
  readonly differenceMinor: number | null;
  readonly message: string;
}

/** Changes that lead from a refused package to one that can be made. */
export interface WayOut {
  readonly changes: readonly PackageChange[];
  readonly differenceMinor: number | null;
  readonly message: string;
}

export interface PriceAnswer {
  readonly currency: string;
  readonly lines: readonly QuoteLine[];
  readonly total: number;
  /** What became of each code that was typed. */
  readonly codes: readonly { readonly code: string; readonly used: boolean; readonly message: string }[];
}

export interface Answer {
  readonly verdict: Verdict;
  readonly pairs: readonly PairAnswer[];
  readonly price: PriceAnswer;
}

export type Reply =
  | { readonly ok: true; readonly answer: Answer }
  | { readonly ok: false; readonly faults: readonly Fault[] };
