import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type RunningServer, serveFolder } from '../../src/commands/serve.ts';

/** The folder that `npm run build` fills. */
export const builtShop = fileURLToPath(new URL('../../dist', import.meta.url));

/** Serves the built shop on a free port of this machine. Throws when it has not been built. */
export async function serveShop(): Promise<RunningServer> {
  if (!existsSync(`${builtShop}/index.html`)) {
    throw new Error(`${builtShop} holds no index.html: run "npm run build" before the browser tests.`);
  }
  return serveFolder(builtShop);
}
