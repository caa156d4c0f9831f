/**
 * Runs Astro (`build`, `dev`, `check`) with its reports to its makers off: they, and the notice about them, come
 * before the project's settings are read, so the switch has to be set in the environment first.
 */
import { whenAskedToStop } from './stop.ts';

process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
// What a shell reports for an interrupted program.
whenAskedToStop(() => process.exit(130));
await import(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url).href);
