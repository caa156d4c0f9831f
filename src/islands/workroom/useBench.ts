/** The bench that the components of the page share. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Bench } from './bench.ts';

export const OnBench = createContext<Bench | null>(null);

/** The bench of this page. Throws outside of it. */
export function useBench(): Bench {
  const bench = useContext(OnBench);
  if (bench === null) throw new Error('This component stands outside of a workroom.');
  return bench;
}
