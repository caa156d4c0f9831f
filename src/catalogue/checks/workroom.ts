/** The workroom part of shop.yaml names materials and coatings that are there, and rising bands. */
import { type AuthoredShop, type Check, type Content, faultsOf } from '../content.ts';
import type { ContentFault, FieldPath } from '../fault.ts';
import { listNames, nearest } from '../nearest.ts';
import { faultAt } from '../reading/entry.ts';
import type { Origin } from '../reading/origin.ts';

/** Faults of the workroom that its schema cannot see. */
export const checkWorkroom: Check = ({ shop, materials, coatings }) => {
  return faultsOf(shop === null ? [] : [shop], ({ origin, value }) =>
    workroomFaults(origin, value, materials, coatings),
  );
};

function workroomFaults(
  origin: Origin,
  value: AuthoredShop,
  materials: Content['materials'],
  coatings: Content['coatings'],
): ContentFault[] {
  const faults: ContentFault[] = [];
  const named = (noun: string, known: readonly { readonly id: string }[]) => {
    const ids = known.map(({ id }) => id);
    return (id: string, path: FieldPath) => {
      if (ids.includes(id)) return;
      const meant = nearest(id, ids);
      faults.push(
        faultAt(origin, ['workroom', ...path], {
          code: 'unknown-reference',
          expected: `a ${noun} of this shop: ${listNames(ids)}`,
          received: `"${id}"`,
          hint: meant === null ? `Add the ${noun}, or name another.` : `Did you mean "${meant}"?`,
        }),
      );
    };
  };
  const material = named('material', materials);
  const coating = named('coating', coatings);
  value.workroom.edging.forEach((note, at) => {
    note.materials.forEach((id, i) => {
      material(id, ['edging', at, 'materials', i]);
    });
  });
  value.workroom.billing.forEach(({ when }, at) => {
    when.material?.forEach((id, i) => {
      material(id, ['billing', at, 'when', 'material', i]);
    });
    when.coating?.forEach((id, i) => {
      coating(id, ['billing', at, 'when', 'coating', i]);
    });
  });
  const axis = value.workroom.tolerance.own.axis ?? [];
  const falls = axis.findIndex(({ upToD }, at) => at > 0 && upToD <= (axis[at - 1]?.upToD ?? 0));
  if (falls > 0)
    faults.push(
      faultAt(origin, ['workroom', 'tolerance', 'own', 'axis', falls, 'upToD'], {
        code: 'not-ascending',
        expected: `more than ${axis[falls - 1]?.upToD} D, the band before it`,
        received: String(axis[falls]?.upToD),
        hint: 'Put the bands in ascending order.',
      }),
    );
  return faults;
}
