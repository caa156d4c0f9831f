/** What advice is drawn with: loaded once there is any. */
import { useSheet } from './sheet.ts';
import { useLater } from './useLater.ts';
import { useStore } from './useStore.ts';

/** Its parts once they are there; null before; `failed` where they do not load. */
export function useAdvice() {
  const { kind } = useStore(useSheet().advice);
  return useLater(() => import('./Advice.tsx'), kind !== 'none');
}
