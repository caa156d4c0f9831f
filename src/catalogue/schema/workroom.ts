/** What the part `workroom` of content/shop.yaml holds; everything in it may be left out. */
import * as z from 'zod/mini';
import { PLACED_ITEMS, type PlacedItem } from '../../optics/tolerance/table.ts';
import { DESIGN_KINDS } from '../design.ts';
import { TINT_KINDS } from '../tint.ts';
import { TOLERANCE_IDS, type Workroom } from '../workroom.ts';
import { about } from './about.ts';
import { fields, flag, id, list, number, oneOf, orElse, orNull, range, text, whole } from './fields.ts';

/** Every field may be left out. */
function ownLimits() {
  const items = Object.keys(PLACED_ITEMS) as PlacedItem[];
  const limit = about('Plus or minus. Default: as the table.', z.optional(number(0.01, 20)));
  const placed = Object.fromEntries(items.map((item) => [item, limit])) as Record<PlacedItem, typeof limit>;
  return fields({
    powerD: about('Any power, plus or minus, D.', orNull(number(0.01, 2, 'D'))),
    cylinderD: about('Any cylinder, plus or minus, D.', orNull(number(0.01, 2, 'D'))),
    axis: about(
      'By the cylinder ordered, ascending.',
      orNull(
        list(
          fields({
            upToD: about('Largest cylinder of this band, D.', number(0, 20, 'D')),
            degrees: about('Plus or minus, degrees.', number(0.5, 90, 'degrees')),
          }),
          1,
        ),
      ),
    ),
    addD: about('Any add, plus or minus, D.', orNull(number(0.01, 2, 'D'))),
    placed: about(
      "Items of one number, such as `segment-height`, plus or minus, in the item's own unit.",
      orElse(
        z.pipe(
          fields(placed),
          z.transform((named) => named as Partial<Record<PlacedItem, number>>),
        ),
        {},
      ),
    ),
  });
}

const NO_OWN_LIMITS = { powerD: null, cylinderD: null, axis: null, addD: null, placed: {} };

function tolerance() {
  return fields({
    standard: about('The table that a pair is held to.', oneOf(TOLERANCE_IDS)),
    memoryChecked: about(
      'The owner has checked figures that are from memory against the text: they may decide a pair. Default false.',
      orElse(flag(), false),
    ),
    own: about(
      'Limits of the shop itself, put over those of the table. Default none.',
      orElse(ownLimits(), NO_OWN_LIMITS),
    ),
  });
}

function billingCode() {
  return fields({
    code: about('As the payer writes it.', text()),
    label: about('What the receipt says.', text()),
    of: about('Printed once a frame, or once a lens.', oneOf(['frame', 'lens'] as const)),
    when: about(
      'All that is named must hold. Default: always.',
      orElse(
        fields({
          design: about('Kinds of design.', z.optional(list(oneOf(DESIGN_KINDS), 1))),
          material: about('Ids of materials.', z.optional(list(id(), 1))),
          tint: about('Kinds of tint.', z.optional(list(oneOf(TINT_KINDS), 1))),
          coating: about('Ids of coatings.', z.optional(list(id(), 1))),
          sphereAbsD: about('Absolute sphere in minus-cylinder form, D.', z.optional(range(0, 40, 'D'))),
          cylinderAbsD: about('Absolute cylinder, D.', z.optional(range(0, 20, 'D'))),
          addD: about('Add, D.', z.optional(range(0, 5, 'D'))),
          prism: about('Whether prism is prescribed in this lens.', z.optional(flag())),
        }),
        {},
      ),
    ),
  });
}

function lateAfterDays() {
  const days = (usual: number) => about(`Default ${usual}.`, orElse(whole(0, 365, 'days'), usual));
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
  const added = about('Default 0.', orElse(number(-5, 5, 'mm'), 0));
  return fields({
    bevelHeightMm: about('Default 0.6.', orElse(number(0.2, 2, 'mm'), 0.6)),
    bevelAngleDeg: about(
      'Between the faces of the bevel. Default 116.',
      orElse(number(60, 160, 'degrees'), 116),
    ),
    grooveWidthMm: about('Default 0.6.', orElse(number(0.2, 2, 'mm'), 0.6)),
    grooveDepthMm: about('Default 0.5.', orElse(number(0.1, 2, 'mm'), 0.5)),
    grooveShoulderMm: about('Least lens on each side of a groove.', orElse(number(0.1, 3, 'mm'), 0.5)),
    addedToCircumferenceMm: about(
      'What the finished circumference is cut over that of the outline.',
      orElse(fields({ full: added, grooved: added, drilled: added }), {
        full: 0,
        grooved: 0,
        drilled: 0,
      }),
    ),
  });
}

/** Schema of the workroom; ids of materials and coatings are checked besides. */
export function workroomSchema() {
  const whole = fields({
    tolerance: about(
      'What a finished pair is held to.',
      orElse(tolerance(), {
        standard: 'ansi-z80.1-2015',
        memoryChecked: false,
        own: NO_OWN_LIMITS,
      }),
    ),
    lateAfterDays: about(
      'Days after which a job is late in a state.',
      orElse(lateAfterDays(), usual(lateAfterDays())),
    ),
    taxId: about('Printed on receipts. Default null: none.', orNull(text())),
    billingNote: about('A sentence below the billing codes. Default null: none.', orNull(text())),
    billing: about('Default none.', orElse(list(billingCode()), [])),
    edging: about(
      'How materials are held and polished. Default none.',
      orElse(
        list(
          fields({
            materials: about('Ids of materials.', list(id(), 1)),
            pressure: about('How the lens is held and cut.', text()),
            polish: about('How its edge is finished.', text()),
          }),
        ),
        [],
      ),
    ),
    alignment: about(
      'What is looked at before a pair leaves, in order; at most 8 lines, which fit on the sheet. Default none.',
      orElse(list(text()).check(z.maxLength(8, { error: 'a list of at most 8' })), []),
    ),
    cut: about('How lenses are cut.', orElse(cut(), usual(cut()))),
  });
  return orElse(whole, usual(whole)) satisfies z.ZodMiniType<Workroom>;
}

/** What a part is when nothing of it is given. */
function usual<Part extends z.core.$ZodType>(part: Part): z.core.output<Part> {
  return z.parse(part, {});
}
