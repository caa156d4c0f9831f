/**
 * `npm start`: builds the shop, serves it on this machine and says where. `--port N` asks for another first port.
 * Stops on Ctrl-C or a request to terminate, in the middle of the build too, and leaves nothing running.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { type RunningServer, serveFolder } from './serve.ts';
import { whenAskedToStop } from './stop.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

function readPort(): number {
  const { values } = parseArgs({ options: { port: { type: 'string', default: '4321' } } });
  const port = Number(values.port);
  if (Number.isInteger(port) && port >= 1 && port <= 65_515) return port;
  throw new Error(`--port: expected a whole number from 1 to 65515, found "${values.port}".`);
}

let builder: ChildProcess | undefined;
let server: RunningServer | undefined;

async function stop() {
  builder?.kill();
  await server?.close();
  process.exit(0);
}

function build(): Promise<number> {
  const astro = fileURLToPath(new URL('./astro.ts', import.meta.url));
  builder = spawn(process.execPath, [astro, 'build'], { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  return new Promise((settle, fail) => {
    builder?.once('error', fail);
    builder?.once('exit', (status) => settle(status ?? 1));
  });
}

async function start(): Promise<void> {
  const port = readPort();
  const status = await build();
  if (status !== 0) process.exit(status);
  server = await serveFolder(`${root}/dist`, {
    port,
    onTaken: (taken) => console.log(`Port ${taken} is taken: trying ${taken + 1}.`),
  });
  console.log(`The shop is open at ${server.origin}/ (Ctrl-C closes it).`);
}

whenAskedToStop(() => void stop());

start().catch((error: Error) => {
  console.error(error.message);
  process.exit(1);
});
