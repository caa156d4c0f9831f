/**
 * The nearest change in this shop that clears a finding: computed, never guessed. Every single change is judged, the
 * smallest kind of change first and within a kind the cheapest, among tints the nearest in kind and darkness; one is taken when the finding is gone and no rule
 * stops what it did not stop before. One after which the pair can be made goes before one after which it is still
 * refused, which says so.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Outcome } from '../rules/finding.ts';
import { round2 } from '../rules/round.ts';
import { RULES } from '../rules/rules.ts';
import { sharpAngles } from '../rules/sharpAngle.ts';
import type { LensSituation, Situation } from '../rules/situation.ts';
import type { Finding, Remedy } from './answer.ts';
import { CHANGE_KINDS, changeName, changesOf, frameChanges, type PackageChange } from './change.ts';
import { judge, type RuleOutcome } from './judge.ts';
import type { PairRequest } from './request.ts';
import { resolvePair } from './resolve.ts';
import { situate } from './situation.ts';
import type { OrderTotal } from './total.ts';
import { asksHeights, withChanges } from './withChanges.ts';

interface Candidate {
  readonly change: PackageChange;
  readonly situation: Situation;
  readonly outcomes: readonly RuleOutcome[];
  readonly totalMinor: number | null;
}

/** Remedies for findings of one pair, in their order; null where no single change of this shop clears one. */
export function remediesFor(
  offer: Offer,
  date: string,
  pair: PairRequest,
  findings: readonly Finding[],
  totalOf: OrderTotal,
): readonly (Remedy | null)[] {
  const wanted = findings.map(isWanted);
  if (!wanted.includes(true)) return findings.map(() => null);
  const present = judged(offer, date, pair);
  if (present === null) return findings.map(() => null);
  const stopsBefore = new Set(present.outcomes.filter(isStop).map(keyOf));
  const candidates = new Map<string, readonly Candidate[]>();
  const ofKind = (kind: (typeof CHANGE_KINDS)[number]) => {
    let list = candidates.get(kind);
    if (list === undefined) {
      list = candidatesOf(offer, date, pair, kind, totalOf, present.situation).filter(({ outcomes }) =>
        outcomes.every((outcome) => !isStop(outcome) || stopsBefore.has(keyOf(outcome))),
      );
      candidates.set(kind, list);
    }
    return list;
  };
  return findings.map((finding, index) => {
    if (!wanted[index]) return null;
    let clearing: Candidate | null = null;
    for (const kind of finding.rule === SHARP_VIEW ? SHARPENING : CHANGE_KINDS) {
      const able = ofKind(kind).filter(
        ({ outcomes, situation }) =>
          clears(outcomes, finding) && (finding.level === 'stop' || sameHold(situation, present.situation)),
      );
      const whole = able.find(({ outcomes }) => refusals(outcomes).length === 0);
      if (whole) return worded(offer, pair, present.situation, whole, finding);
      // While the pair is refused for another reason, what clears a caution alone helps nobody.
      if (finding.level === 'stop') clearing ??= able[0] ?? null;
    }
    return clearing && worded(offer, pair, present.situation, clearing, finding);
  });
}

/** Rules that wait for an entry: they refuse nothing that could be chosen. */
const ASKING = new Set(['prescription-incomplete', 'measurement-missing']);

/** Rules that still stop a package once all is entered. */
const refusals = (outcomes: readonly RuleOutcome[]): readonly string[] => [
  ...new Set(outcomes.filter((one) => isStop(one) && !ASKING.has(one.rule)).map(({ rule }) => rule)),
];

const CHOICES = new Set(RULES.filter(({ clearedBy }) => clearedBy === 'choice').map(({ id }) => id));

/** The one note that is worth a remedy: a blank that nobody asked for may be the cause. */
const SHARP_VIEW = 'sharp-view';
const BEYOND_RIM = 'edge-beyond-rim';
/** What changes the curves of a lens and leaves the wearer's frame and kind of lens alone. */
const SHARPENING = ['blank', 'material'] as const;

/** Whether another choice could help at all: no frame of this shop makes a prescription younger. */
const isWanted = ({ rule, level }: Finding) => rule === SHARP_VIEW || (level !== 'note' && CHOICES.has(rule));

const isStop = ({ level }: Outcome) => level === 'stop';
const keyOf = ({ rule, eye }: { readonly rule: string; readonly eye: string }) => `${rule} ${eye}`;
const RANK = { note: 1, caution: 2, stop: 3 } as const;

/** Another way to hold the lens is no cure for a caution: where no rim is, nothing stands beyond it. */
const sameHold = (one: Situation, other: Situation) => one.frame.mounting === other.frame.mounting;

/** Gone for this eye, or no more than a note where it was more. */
const clears = (outcomes: readonly RuleOutcome[], finding: Finding) =>
  outcomes.every(
    (outcome) =>
      keyOf(outcome) !== keyOf(finding) || RANK[outcome.level] < Math.min(RANK[finding.level], RANK.caution),
  );

function judged(offer: Offer, date: string, pair: PairRequest) {
  const resolved = resolvePair(offer, pair, '', []);
  if (resolved === null) return null;
  const situation = situate(offer.shop.habits, date, pair, resolved.frame, resolved.lenses);
  return { shopFrame: resolved.shopFrame, situation, outcomes: judge(situation) };
}

/** Light that the darkest state of the lenses lets through, 0 to 1; 1 without a tint. */
const darkest = ({ tint }: Situation): number =>
  Math.min(1, ...(tint?.states ?? []).map(({ transmittance }) => transmittance));

/**
 * All changes of a kind, judged: frames for this wearer before others, the nearest tints first, then the cheapest;
 * those without a price last.
 */
function candidatesOf(
  offer: Offer,
  date: string,
  pair: PairRequest,
  kind: (typeof CHANGE_KINDS)[number],
  totalOf: OrderTotal,
  present: Situation,
): readonly Candidate[] {
  const apart = ({ situation }: Candidate) =>
    kind === 'tint'
      ? Number(situation.tint?.kind !== present.tint?.kind) + Math.abs(darkest(situation) - darkest(present))
      : 0;
  const groups = kind === 'frame' ? frameChanges(offer, pair) : [changesOf(offer, pair, kind)];
  return groups.flatMap((changes) =>
    changes
      .flatMap((change) => {
        const result = judged(offer, date, withChanges(offer, pair, [change]));
        if (result === null) return [];
        return [{ change, ...result, totalMinor: totalOf(result.shopFrame, result.situation) }];
      })
      .sort(
        (one, other) =>
          apart(one) - apart(other) || (one.totalMinor ?? Infinity) - (other.totalMinor ?? Infinity),
      ),
  );
}

function worded(
  offer: Offer,
  pair: PairRequest,
  before: Situation,
  { change, situation, outcomes }: Candidate,
  { rule }: Finding,
): Remedy {
  const { words } = offer;
  const name = changeName(offer, pair, change);
  const still = refusals(outcomes).map((rule) => say(words, `rule.${rule}.title`));
  const text =
    still.length > 0
      ? say(words, 'remedy.partly', { name, reasons: still.join(say(words, 'worksheet.semicolon')) })
      : say(words, `remedy.${change.kind}${change.kind === 'blank' ? `-${change.value}` : ''}`, { name });
  const heights = asksHeights(pair, [change]) ? ` ${say(words, 'remedy.heights')}` : '';
  // A thicker edge in a deeper rim is no loss: of what shows beyond a rim, what shows is told.
  const edge = rule === BEYOND_RIM ? 'beyond' : 'thickest';
  const [fromMm, toMm] = [EDGES[edge](before), EDGES[edge](situation)];
  const figures =
    fromMm === null || toMm === null || fromMm === toMm
      ? ''
      : ` ${say(words, `remedy.${edge}`, { fromMm, toMm })}`;
  const [from, to] = rule === SHARP_VIEW ? [sharpAngles(before), sharpAngles(situation)] : [null, null];
  const sharp =
    from && to ? ` ${say(words, 'remedy.sharp', { fromDeg: from.leastDeg, toDeg: to.leastDeg })}` : '';
  return { change, message: `${text}${sharp}${figures}${heights}` };
}

const mostOf =
  (of: (lens: LensSituation) => number) =>
  ({ right, left }: Situation): number | null =>
    right.lens && left.lens && round2(Math.max(of(right.lens), of(left.lens)));

/** Of both lenses, mm: the thickest edge, and the most that shows of one; null where no lens could be computed. */
const EDGES = {
  thickest: mostOf(({ thickest }) => thickest.mm),
  beyond: mostOf(({ beyondRimMm }) => beyondRimMm),
} as const;
