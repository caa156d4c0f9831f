/** The tolerance profile that the owner chose in shop.yaml. */
import type { ToleranceChoice } from '../../catalogue/workroom.ts';
import { ANSI_Z80_1_2015 } from '../../optics/tolerance/ansiZ80.ts';
import { iso21987 } from '../../optics/tolerance/iso21987.ts';
import { NEW_JERSEY } from '../../optics/tolerance/newJersey.ts';
import { shopProfile } from '../../optics/tolerance/shopProfile.ts';
import type { LensTolerances, PlacedItem, ToleranceStandard } from '../../optics/tolerance/table.ts';

const STANDARDS: Readonly<Record<ToleranceChoice['standard'], ToleranceStandard>> = {
  'ansi-z80.1-2015': ANSI_Z80_1_2015,
  'iso-21987-2017': iso21987('21987:2017'),
  'iso-21987-2017-axis-2004': iso21987('8980-1:2004'),
  'njac-13-35-5.2': NEW_JERSEY,
};

/** The table with the shop's own limits put over it. `shopName` names the profile where there are any. */
export function toleranceProfile({ standard, own }: ToleranceChoice, shopName: string): ToleranceStandard {
  const base = STANDARDS[standard];
  const { powerD, cylinderD, axis, addD, placed } = own;
  const changes: Partial<LensTolerances> = {
    ...(powerD === null
      ? {}
      : { power: { meridians: 'each', bands: [{ upTo: Infinity, limit: powerD, unit: 'D' }] } }),
    ...(cylinderD === null
      ? {}
      : {
          cylinder: [{ strongestUpToD: Infinity, bands: [{ upTo: Infinity, limit: cylinderD, unit: 'D' }] }],
        }),
    ...(axis === null
      ? {}
      : { axis: axis.map(({ upToD, degrees }) => ({ upTo: upToD, limit: degrees, unit: 'degrees' })) }),
    ...(addD === null ? {} : { add: [{ upTo: Infinity, limit: addD, unit: 'D' }] }),
  };
  const items = Object.entries(placed) as [PlacedItem, number | undefined][];
  const limits = items.flatMap(([item, limit]) =>
    limit === undefined ? [] : [[item, { limit, basis: 'shop' }] as const],
  );
  if (Object.keys(changes).length === 0 && limits.length === 0) return base;
  const all = { ...changes, placed: Object.fromEntries(limits) };
  return shopProfile(shopName, base, { 'single-vision': all, multifocal: all, progressive: all });
}
