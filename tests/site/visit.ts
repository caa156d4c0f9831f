/** The built shop served, and a browser to visit it, for all tests of a file that imports them. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import type { RunningServer } from '../../src/commands/serve.ts';
import { openBrowser } from './browser.ts';
import { serveShop } from './server.ts';

export let server: RunningServer;
export let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([serveShop(), openBrowser()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});
