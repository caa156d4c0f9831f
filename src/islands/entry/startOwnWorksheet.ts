/** Brings the worksheet of an own frame to life: its measurements in the place of a choice of frame. */
import { h } from 'preact';
import { untilKnown } from '../../configurator/entry/waiting.ts';
import type { ShopData } from '../../configurator/shopData.ts';
import { type PageData, startWorksheet as start } from '../startWorksheet.ts';
import type { FamilyPaths } from './familyPaths.ts';
import { OwnFrame } from './OwnFrame.tsx';

/** Hydrates the form in `root`. */
export function startWorksheet(root: HTMLElement, page: PageData, data: ShopData): void {
  // Computed when the page was built, so that the browser need not.
  const paths = (page as PageData & { readonly families: FamilyPaths }).families;
  start(root, page, data, { front: h(OwnFrame, { paths }), around: untilKnown });
}
