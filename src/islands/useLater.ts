/** A part of the page's script that is loaded when it is first wanted. */
import { useEffect, useState } from 'preact/hooks';

/** The part once it is there; null before; `failed` where it does not load. */
export function useLater<T extends object>(load: () => Promise<T>, wanted: boolean): T | null | 'failed' {
  const [part, setPart] = useState<T | null | 'failed'>(null);
  useEffect(() => {
    if (!wanted || part !== null) return;
    load().then(setPart, (error) => {
      setPart('failed');
      console.error(error);
    });
  }, [wanted]);
  return part;
}
