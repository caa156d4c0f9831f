/**
 * `npm start`: builds the shop, serves it on this machine and says where: below a path where the shop's address has one.
 * `--port N` asks for another first port; `--base`, `--shop` and `--date` are those of `npm run build`.
 * Stops on Ctrl-C or a request to terminate, in the middle of the build too, and leaves nothing running.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { loadCatalogue } from '../catalogue/load.ts';
import { readBuildOptions } from './buildOptions.ts';
import { type RunningServer, serveFolder } from './serve.ts';
import { whenAskedToStop } from './stop.ts';
import { basePathOf } from './underBase.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The port, and what goes to the build. */
function readLine() {
  const options = readBuildOptions(process.argv.slice(2));
  if ('fault' in options) throw new Error(options.fault);
  const { BEVELBOOK_OUT: out = `${root}/dist`, ...env } = options.env;
  const { values } = parseArgs({
    args: options.rest,
    options: { port: { type: 'string', default: '4321' } },
  });
  const port = Number(values.port);
  if (Number.isInteger(port) && port >= 1 && port <= 65_515)
    return { port, out, env: { ...env, BEVELBOOK_OUT: out } as Record<string, string> };
  throw new Error(`--port: expected a whole number from 1 to 65515, found "${values.port}".`);
}

/** The path below which the pages were built, without its last slash. */
function basePath({
  BEVELBOOK_BASE: base,
  BEVELBOOK_SHOP: folder,
}: Readonly<Record<string, string>>): string {
  if (base !== undefined) return base.replace(/\/$/, '');
  const reading = loadCatalogue(folder ?? `${root}/content`);
  return reading.ok ? basePathOf(reading.catalogue.shop.address) : '';
}

let builder: ChildProcess | undefined;
let server: RunningServer | undefined;

async function stop() {
  builder?.kill();
  await server?.close();
  process.exit(0);
}

function build(env: Readonly<Record<string, string>>): Promise<number> {
  const astro = fileURLToPath(new URL('./astro.ts', import.meta.url));
  builder = spawn(process.execPath, [astro, 'build'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...env },
  });
  return new Promise((settle, fail) => {
    builder?.once('error', fail);
    builder?.once('exit', (status) => settle(status ?? 1));
  });
}

async function start(): Promise<void> {
  const { port, out, env } = readLine();
  const status = await build(env);
  if (status !== 0) process.exit(status);
  const base = basePath(env);
  server = await serveFolder(out, {
    port,
    base,
    onTaken: (taken) => console.log(`Port ${taken} is taken: trying ${taken + 1}.`),
  });
  console.log(`The shop is open at ${server.origin}${base}/ (Ctrl-C closes it).`);
}

whenAskedToStop(() => void stop());

start().catch((error: Error) => {
  console.error(error.message);
  process.exit(1);
});
