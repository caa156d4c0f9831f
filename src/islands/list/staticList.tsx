/** The list's form as the page is built with it: untouched. */
import { renderToString } from 'preact-render-to-string';
import { createFrameList, type ListSource } from '../../configurator/list/frameList.ts';
import { ListForm } from './ListForm.tsx';

/** HTML of the form. */
export const listHtml = (source: ListSource): string =>
  renderToString(<ListForm stores={createFrameList(source)} />);
