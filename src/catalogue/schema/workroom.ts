/** What the part `workroom` of content/shop.yaml holds; everything in it may be left out. */
import * as z from 'zod/mini';
import { PLACED_ITEMS, type PlacedItem } from '../../optics/tolerance/table.ts';
import { DESIGN_KINDS } from '../design.ts';
import { TINT_KINDS } from '../tint.ts';
import { TOLERANCE_IDS, type Workroom } from '../workroom.ts';
import { fields, flag, id, list, number, oneOf, orElse, orNull, range, text, whole } from './fields.ts';

/** Every field may be left out. */
function ownLimits() {
  const items = Object.keys(PLACED_ITEMS) as PlacedItem[];
  const limit = z.optional(number(0.01, 20));
  const placed = Object.fromEntries(items.map((item) => [item, limit])) as Record<PlacedItem, typeof limit>;
  return fields({
    /** Any power, plus or minus, D. */
    powerD: orNull(number(0.01, 2, 'D')),
    /** Any cylinder, plus or minus, D. */
    cylinderD: orNull(number(0.01, 2, 'D')),
    /** By the cylinder ordered, ascending. */
    axis: orNull(list(fields({ upToD: number(0, 20, 'D'), degrees: number(0.5, 90, 'degrees') }), 1)),
    /** Any add, plus or minus, D. */
    addD: orNull(number(0.01, 2, 'D')),
    /** Items of one number, such as `segment-height`, plus or minus, in the item's own unit. */
    placed: orElse(
      z.pipe(
        fields(placed),
        z.transform((named) => named as Partial<Record<PlacedItem, number>>),
      ),
      {},
    ),
  });
}

const NO_OWN_LIMITS = { powerD: null, cylinderD: null, axis: null, addD: null, placed: {} };

function tolerance() {
  return fields({
    /** The table that a pair is held to. */
    standard: oneOf(TOLERANCE_IDS),
    /** The owner has checked figures that are from memory against the text: they may decide a pair. Default false. */
    memoryChecked: orElse(flag(), false),
    /** Limits of the shop itself, put over those of the table. Default none. */
    own: orElse(ownLimits(), NO_OWN_LIMITS),
  });
}

function billingCode() {
  return fields({
    code: text(),
    label: text(),
    /** Printed once a frame, or once a lens. */
    of: oneOf(['frame', 'lens'] as const),
    /** All that is named must hold. Default: always. */
    when: orElse(
      fields({
        design: z.optional(list(oneOf(DESIGN_KINDS), 1)),
        material: z.optional(list(id(), 1)),
        tint: z.optional(list(oneOf(TINT_KINDS), 1)),
        coating: z.optional(list(id(), 1)),
        /** Absolute sphere in minus-cylinder form, D. */
        sphereAbsD: z.optional(range(0, 40, 'D')),
        /** Absolute cylinder, D. */
        cylinderAbsD: z.optional(range(0, 20, 'D')),
        addD: z.optional(range(0, 5, 'D')),
        /** Whether prism is prescribed in this lens. */
        prism: z.optional(flag()),
      }),
      {},
    ),
  });
}

function lateAfterDays() {
  const days = (usual: number) => orElse(whole(0, 365, 'days'), usual);
  return fields({
    received: days(2),
    'lenses-ordered': days(10),
    'lenses-in': days(2),
    cut: days(1),
    inspected: days(1),
    returned: days(3),
  });
}

function cut() {
  const added = orElse(number(-5, 5, 'mm'), 0);
  return fields({
    bevelHeightMm: orElse(number(0.2, 2, 'mm'), 0.6),
    bevelAngleDeg: orElse(number(60, 160, 'degrees'), 116),
    grooveWidthMm: orElse(number(0.2, 2, 'mm'), 0.6),
    grooveDepthMm: orElse(number(0.1, 2, 'mm'), 0.5),
    /** Least lens on each side of a groove. */
    grooveShoulderMm: orElse(number(0.1, 3, 'mm'), 0.5),
    /** What the finished circumference is cut over that of the outline. */
    addedToCircumferenceMm: orElse(fields({ full: added, grooved: added, drilled: added }), {
      full: 0,
      grooved: 0,
      drilled: 0,
    }),
  });
}

/** Schema of the workroom; ids of materials and coatings are checked besides. */
export function workroomSchema() {
  const whole = fields({
    tolerance: orElse(tolerance(), {
      standard: 'ansi-z80.1-2015',
      memoryChecked: false,
      own: NO_OWN_LIMITS,
    }),
    /** Days after which a job is late in a state. */
    lateAfterDays: orElse(lateAfterDays(), usual(lateAfterDays())),
    /** Printed on receipts. Default null: none. */
    taxId: orNull(text()),
    /** A sentence below the billing codes. Default null: none. */
    billingNote: orNull(text()),
    /** Default none. */
    billing: orElse(list(billingCode()), []),
    /** How materials are held and polished. Default none. */
    edging: orElse(list(fields({ materials: list(id(), 1), pressure: text(), polish: text() })), []),
    /** What is looked at before a pair leaves, in order; at most 8 lines, which fit on the sheet. Default none. */
    alignment: orElse(list(text()).check(z.maxLength(8, { error: 'a list of at most 8' })), []),
    cut: orElse(cut(), usual(cut())),
  });
  return orElse(whole, usual(whole)) satisfies z.ZodMiniType<Workroom>;
}

/** What a part is when nothing of it is given. */
function usual<Part extends z.core.$ZodType>(part: Part): z.core.output<Part> {
  return z.parse(part, {});
}
