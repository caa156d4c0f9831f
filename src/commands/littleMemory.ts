/** Keeps a build small. Both settings are read as the first page or bundle is made, so they go before Astro is loaded. */
import { setFlagsFromString } from 'node:v8';

/**
 * Lets a build give back what it no longer needs. Each page's text is some hundred kilobytes that outlive the first
 * collections: by its own measure V8 would let them pile up to thrice what the shop takes. The bundler keeps its memory
 * for later bundles, of which there are none.
 */
export function useLittleMemory(): void {
  setFlagsFromString('--heap-growing-percent=30');
  process.env['MIMALLOC_PURGE_DELAY'] ??= '0';
}
