/**
 * Vite plugin that bundles the scripts of a folder with copies of their own of all that they import from `src`. Parts
 * that a frame's page shares with a page that few visit would otherwise be split into small files that weigh more.
 */
import { basename, resolve, sep } from 'node:path';
import type { ViteUserConfig } from 'astro';

type VitePlugin = Extract<NonNullable<ViteUserConfig['plugins']>[number], { name: string }>;

/** The plugin for a folder, from the project's root. */
export function apart(folder: string): VitePlugin {
  const mark = `?apart=${basename(folder)}`;
  const source = resolve('src') + sep;
  const own = resolve(folder) + sep;
  const isOurs = (id: string) => id.startsWith(source) && /\.tsx?$/.test(id);
  return {
    name: `bevelbook-apart-${basename(folder)}`,
    apply: 'build',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    async resolveId(id, importer, options) {
      if (importer === undefined || !(importer.endsWith(mark) || importer.startsWith(own))) return null;
      const found = await this.resolve(id, importer.replace(mark, ''), { ...options, skipSelf: true });
      return found !== null && isOurs(found.id) ? { ...found, id: found.id + mark } : found;
    },
  };
}
