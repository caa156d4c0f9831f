/** The worksheet that pages are built with. */
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { openingOf } from '../../src/configurator/opening.ts';
import { createWorksheet } from '../../src/configurator/worksheet.ts';
import { OptionList } from '../../src/islands/OptionList.tsx';
import type { ListProps } from '../../src/islands/OptionPlace.tsx';
import { worksheetHtml } from '../../src/islands/staticWorksheet.tsx';
import { OtherParts, Worksheet } from '../../src/islands/Worksheet.tsx';
import { shop } from '../configurator/shop.ts';

const date = '2026-11-25';
/** Whole, where a browser begins with its place. */
const List = ({ kind }: ListProps) => h('div', { class: 'ws-place' }, h(OptionList, { kind }));

it('is for each frame what its worksheet renders by itself, though parts are rendered once for many', () => {
  for (const frame of shop.frames) {
    const source = { frame, data: shop, opening: openingOf(shop, frame, date) };
    const stores = createWorksheet({ ...source, date });
    expect(worksheetHtml(source)).toBe(
      renderToString(h(Worksheet, { stores, others: h(OtherParts, { List }) })),
    );
  }
});
