/** The worksheet of an own frame as the page is built with it. */
import { OWN_FRAME } from '../../configurator/entry/ownFrame.ts';
import type { Opening } from '../../configurator/opening.ts';
import type { ShopData } from '../../configurator/shopData.ts';
import { worksheetHtml } from '../staticWorksheet.tsx';
import type { FamilyPaths } from './familyPaths.ts';
import { OwnFrame } from './OwnFrame.tsx';

/** HTML of that worksheet. */
export const ownWorksheetHtml = (data: ShopData, opening: Opening, paths: FamilyPaths): string =>
  worksheetHtml({ frame: OWN_FRAME, data, opening, front: <OwnFrame paths={paths} /> });
