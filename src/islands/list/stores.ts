/** The stores that the parts of the list's form share. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { FrameListStores } from '../../configurator/list/frameList.ts';

export const List = createContext<FrameListStores | null>(null);

/** The stores of this page's list. Throws outside of one. */
export function useList(): FrameListStores {
  const stores = useContext(List);
  if (stores === null) throw new Error('This component stands outside of a list.');
  return stores;
}
