/** The list's form as the page is built with it: untouched. */
import { createFrameList, type ListSource } from '../../configurator/list/frameList.ts';
import { ListForm } from './ListForm.tsx';

export default function StaticList(source: ListSource) {
  return <ListForm stores={createFrameList(source)} />;
}
