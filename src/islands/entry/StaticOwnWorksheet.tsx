/** The worksheet of an own frame as the page is built with it. */
import { OWN_FRAME } from '../../configurator/entry/ownFrame.ts';
import type { Opening } from '../../configurator/opening.ts';
import type { ShopData } from '../../configurator/shopData.ts';
import StaticWorksheet from '../StaticWorksheet.tsx';
import type { FamilyPaths } from './familyPaths.ts';
import { OwnFrame } from './OwnFrame.tsx';

interface Props {
  readonly data: ShopData;
  readonly opening: Opening;
  readonly paths: FamilyPaths;
}

export default function StaticOwnWorksheet({ data, opening, paths }: Props) {
  return (
    <StaticWorksheet frame={OWN_FRAME} data={data} opening={opening} front={<OwnFrame paths={paths} />} />
  );
}
