/** Names that must be different from each other inside one file. */
import { type Check, type Content, faultsOf } from '../content.ts';
import type { ContentFault, FieldPath } from '../fault.ts';
import type { OrderTerms } from '../orderTerms.ts';
import { faultAt } from '../reading/entry.ts';
import type { Origin } from '../reading/origin.ts';

/** Faults for each item of `names` that stood before; `path` leads to the name of one item. */
function repeated(
  origin: Origin,
  names: readonly string[],
  path: (index: number) => FieldPath,
): ContentFault[] {
  return names.flatMap((name, index) => {
    const first = names.indexOf(name);
    if (first === index) return [];
    const detail = {
      code: 'duplicate-id',
      expected: 'an id of its own for each',
      received: `"${name}" again, as in item ${first + 1} of this list`,
      hint: 'Rename one of the two, or remove it.',
    } as const;
    return [faultAt(origin, path(index), detail)];
  });
}

const inShop = ({ shop }: Content): ContentFault[] =>
  faultsOf(
    shop === null ? [] : [shop],
    ({ origin, value }) =>
      repeated(
        origin,
        value.collections.map(({ id }) => id),
        (index) => ['collections', index, 'id'],
      ),
    ({ origin, value }) =>
      repeated(
        origin,
        value.exemptions.map(({ id }) => id),
        (index) => ['exemptions', index, 'id'],
      ),
    ({ origin, value }) => inTerms(origin, value.order),
    ({ origin, value }) => {
      const places = value.shipping.flatMap(({ destinations }, rate) =>
        destinations.map((place, index) => ({ place, path: ['shipping', rate, 'destinations', index] })),
      );
      return repeated(
        origin,
        places.map(({ place }) => place),
        (index) => places[index]?.path ?? [],
      );
    },
  );

function inTerms(origin: Origin, { publicKeys, delivery, consents, payments }: OrderTerms): ContentFault[] {
  return [
    ...repeated(origin, publicKeys, (index) => ['order', 'publicKeys', index]),
    ...repeated(origin, delivery, (index) => ['order', 'delivery', index]),
    ...Object.entries({ consents, payments }).flatMap(([list, items]) =>
      repeated(
        origin,
        items.map(({ id }) => id),
        (index) => ['order', list, index, 'id'],
      ),
    ),
  ];
}

/** Sizes, colourways, stock lenses, collections, exemptions, destinations, keys, consents and payments that are named twice. */
export const checkDuplicates: Check = (content) => [
  ...inShop(content),
  ...faultsOf(
    content.frames,
    ({ origin, value }) =>
      repeated(
        origin,
        value.sizes.map(({ id }) => id),
        (index) => ['sizes', index, 'id'],
      ),
    ({ origin, value }) =>
      repeated(
        origin,
        value.colourways.map(({ code }) => code),
        (index) => ['colourways', index, 'code'],
      ),
  ),
  ...faultsOf(content.materials, ({ origin, value }) =>
    repeated(
      origin,
      value.stock.map(({ id }) => id),
      (index) => ['stock', index, 'id'],
    ),
  ),
];
