/** Every id that names another entry must name one that is there. Works on plain values, so that a file with other faults is looked at too. */
import { type Check, type Content, namesOfFrames } from '../content.ts';
import type { ContentFault, FieldPath } from '../fault.ts';
import { MOUNTINGS } from '../frame.ts';
import { listNames, nearest } from '../nearest.ts';
import { faultAt } from '../reading/entry.ts';
import type { Origin } from '../reading/origin.ts';
import { valueAt } from '../schema/parse.ts';

/** What an id may name. */
type Space =
  | 'collection'
  | 'frame'
  | 'outline'
  | 'design'
  | 'material'
  | 'tint'
  | 'coating'
  | 'promotion'
  | 'mounting'
  | 'wearer';

/** A path to ids, `*` for each item of a list. */
type Reference = readonly [path: string, space: Space];

const KINDS = ['design', 'material', 'tint', 'coating', 'mounting', 'wearer', 'frame'] as const;

const limits: readonly Reference[] = KINDS.flatMap((kind): Reference[] => [
  [`limits.*.onlyWith.${kind}.*`, kind],
  [`limits.*.notWith.${kind}.*`, kind],
]);

const REFERENCES = {
  frames: [
    ['collection', 'collection'],
    ['sizes.*.outline.traced', 'outline'],
  ],
  designs: [['materials.*', 'material'], ...limits],
  materials: [['stock.*.coatings.*', 'coating'], ['stock.*.tints.*', 'tint'], ...limits],
  tints: [['materials.*', 'material'], ['designs.*', 'design'], ...limits],
  coatings: [['materials.*', 'material'], ['tints.*', 'tint'], ...limits],
  promotions: [
    ['scope.collections.*', 'collection'],
    ['scope.frames.*', 'frame'],
    ['scope.designs.*', 'design'],
    ['scope.materials.*', 'material'],
    ['scope.tints.*', 'tint'],
    ['scope.coatings.*', 'coating'],
    ['gift.includedLens.design', 'design'],
    ['gift.includedLens.material', 'material'],
    ['gift.includedLens.tint', 'tint'],
    ['gift.includedLens.coating', 'coating'],
    ['joins.*', 'promotion'],
  ],
} as const satisfies Partial<Record<keyof Content, readonly Reference[]>>;

/** The ids there are, or null where that is not known because their file is broken. */
function knownIds(content: Content): Record<Space, ReadonlySet<string> | null> {
  const ids = (entries: readonly { readonly id: string }[]) => new Set(entries.map(({ id }) => id));
  return {
    collection: collectionIds(content),
    frame: ids(content.frames),
    outline: ids(content.outlines),
    design: ids(content.designs),
    material: ids(content.materials),
    tint: ids(content.tints),
    coating: ids(content.coatings),
    promotion: ids(content.promotions),
    mounting: new Set(MOUNTINGS),
    wearer: new Set(['adult', 'child', 'one-eyed']),
  };
}

function collectionIds({ shop }: Content): ReadonlySet<string> | null {
  const list = valueAt(shop?.origin.raw, ['collections']);
  if (!Array.isArray(list)) return null;
  return new Set(list.map((item) => String(valueAt(item, ['id']))));
}

/** Paths and values that a pattern leads to. */
function* matches(
  raw: unknown,
  pattern: readonly string[],
  path: FieldPath = [],
): Generator<[FieldPath, unknown]> {
  const [part, ...rest] = pattern;
  if (part === undefined) yield [path, raw];
  else if (part === '*') {
    if (Array.isArray(raw))
      for (const [index, item] of raw.entries()) yield* matches(item, rest, [...path, index]);
  } else {
    const value = valueAt(raw, [part]);
    if (value !== undefined) yield* matches(value, rest, [...path, part]);
  }
}

/** Where the former id of a frame is understood. */
const FOLLOWED = 'scope.frames.*';

/** Former ids of frames that promotions name: each is understood, and told. */
export function outdatedNames(content: Content): ContentFault[] {
  const former = namesOfFrames(content);
  return content.promotions.flatMap(({ origin }) =>
    [...matches(origin.raw, FOLLOWED.split('.'))].flatMap(([path, id]) => {
      const now = former.get(String(id));
      if (now === undefined) return [];
      return faultAt(origin, path, {
        code: 'former-name',
        expected: `"${now}", which the frame is called now`,
        received: `"${id}"`,
        hint: `Nothing has to be done. Write ${now} when you next change the file.`,
      });
    }),
  );
}

/** Unknown ids in all files. */
export const checkReferences: Check = (content) => {
  const known = knownIds(content);
  const former = namesOfFrames(content);
  const faults: ContentFault[] = [];
  for (const [kind, references] of Object.entries(REFERENCES)) {
    for (const { origin } of content[kind as keyof typeof REFERENCES]) {
      for (const [pattern, space] of references as readonly Reference[]) {
        const ids = known[space];
        if (ids === null) continue;
        for (const [path, id] of matches(origin.raw, pattern.split('.'))) {
          if (typeof id !== 'string' || ids.has(id)) continue;
          const now = space === 'frame' ? former.get(id) : undefined;
          if (now === undefined || pattern !== FOLLOWED)
            faults.push(unknown(origin, path, id, space, ids, now));
        }
      }
    }
  }
  return faults;
};

function unknown(
  origin: Origin,
  path: FieldPath,
  id: string,
  space: Space,
  ids: ReadonlySet<string>,
  now: string | undefined,
) {
  const meant = now ?? nearest(id, ids);
  return faultAt(origin, path, {
    code: 'unknown-reference',
    expected: `the id of ${space === 'outline' ? 'an' : 'a'} ${space}: ${listNames([...ids].sort())}`,
    received: `"${id}"`,
    hint:
      now !== undefined
        ? `It is called ${now} now: write that.`
        : meant === null
          ? `Use one of these, or add the ${space}.`
          : `Did you mean "${meant}"?`,
  });
}
