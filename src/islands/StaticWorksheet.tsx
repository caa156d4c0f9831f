/** The worksheet as the page is built with it: untouched, and complete but for its script. */
import type { ComponentChild } from 'preact';
import type { Frame } from '../catalogue/frame.ts';
import type { Opening } from '../configurator/opening.ts';
import type { ShopData } from '../configurator/shopData.ts';
import { createWorksheet } from '../configurator/worksheet.ts';
import { Worksheet } from './Worksheet.tsx';

interface Props {
  readonly frame: Frame;
  readonly data: ShopData;
  readonly opening: Opening;
  readonly front?: ComponentChild;
}

export default function StaticWorksheet({ frame, data, opening, front }: Props) {
  return <Worksheet stores={createWorksheet({ frame, data, opening, date: opening.date })} front={front} />;
}
