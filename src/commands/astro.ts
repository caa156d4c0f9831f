/**
 * Runs Astro (`build`, `dev`, `check`) with its reports to its makers off: they, and the notice about them, come
 * before the project's settings are read, so the switch has to be set in the environment first. Our own options,
 * `--date`, `--base`, `--shop` and `--out`, go the same way.
 */
import { readBuildOptions } from './buildOptions.ts';
import { useLittleMemory } from './littleMemory.ts';
import { whenAskedToStop } from './stop.ts';

const options = readBuildOptions(process.argv.slice(2));
if ('fault' in options) {
  console.error(options.fault);
  process.exit(1);
}
process.argv.splice(2, Number.POSITIVE_INFINITY, ...options.rest);
Object.assign(process.env, options.env);
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
if (options.rest[0] === 'build') useLittleMemory();
// What a shell reports for an interrupted program.
whenAskedToStop(() => process.exit(130));
await import(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url).href);
