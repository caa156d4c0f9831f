/**
 * Finds a Chromium-based browser and starts it without a window, in this order: CHROME_PATH, an installed Chromium,
 * Chrome, Edge, and on Linux x64 the one that comes with the packages. When none starts it throws and says what to
 * install: a browser test is never skipped. Nothing that a page asks for leaves this machine.
 */
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type LaunchOptions, type Page } from 'playwright-core';

const root = fileURLToPath(new URL('../..', import.meta.url));

const flags = [
  '--disable-gpu',
  '--disable-quic',
  '--disable-sync',
  // Only this machine has names: a page that reaches out fails, and the browser's own services stay silent.
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
];

const installed: Readonly<Record<string, readonly string[]>> = {
  linux: ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/snap/bin/chromium'],
  darwin: ['/Applications/Chromium.app/Contents/MacOS/Chromium'],
  win32: [`${process.env['LOCALAPPDATA']}\\Chromium\\Application\\chrome.exe`],
};

interface Candidate {
  readonly name: string;
  readonly options: () => Promise<LaunchOptions>;
}

/**
 * Unpacks the browser of the packages once. The package would reuse whatever lies in the temporary folder under
 * its name, of any version or half written, so it gets a folder of its own that only ever appears whole.
 */
async function unpackBrowser(): Promise<LaunchOptions> {
  const { version } = JSON.parse(
    readFileSync(`${root}node_modules/@sparticuz/chromium/package.json`, 'utf8'),
  );
  const folder = `${root}.cache/chromium-${version}`;
  if (!existsSync(folder)) {
    const partial = `${folder}.${process.pid}`;
    mkdirSync(partial, { recursive: true });
    const usualFolder = process.env['TMPDIR'];
    process.env['TMPDIR'] = partial;
    try {
      await (await import('@sparticuz/chromium')).default.executablePath();
    } finally {
      if (usualFolder === undefined) delete process.env['TMPDIR'];
      else process.env['TMPDIR'] = usualFolder;
    }
    const dirs = ['/usr/share/fonts', `${folder}/fonts/fonts`].map((dir) => `<dir>${dir}</dir>`);
    const cache = `<cachedir>${folder}/fonts/cache</cachedir>`;
    writeFileSync(`${partial}/fonts/fonts.conf`, `<fontconfig>${dirs.join('')}${cache}</fontconfig>\n`);
    if (existsSync(folder)) rmSync(partial, { recursive: true });
    else renameSync(partial, folder);
  }
  // A bare machine has no fonts, and then text has no size.
  const env = { ...process.env, FONTCONFIG_FILE: `${folder}/fonts/fonts.conf` };
  return { executablePath: `${folder}/chromium`, env };
}

function listCandidates(): Candidate[] {
  const byPath = (path: string): Candidate => ({
    name: path,
    options: async () => ({ executablePath: path }),
  });
  const chosen = process.env['CHROME_PATH'];
  if (chosen) return [byPath(chosen)];
  const found = (installed[process.platform] ?? []).filter((path) => existsSync(path));
  const candidates = found.map(byPath);
  for (const channel of ['chrome', 'msedge'])
    candidates.push({ name: `channel ${channel}`, options: async () => ({ channel }) });
  if (process.platform === 'linux' && process.arch === 'x64')
    candidates.push({ name: 'the packaged browser', options: unpackBrowser });
  return candidates;
}

/** The line of a launch error that says why. */
function explainFailure(error: unknown): string {
  const lines = String(error instanceof Error ? error.message : error).split('\n');
  const reason = lines.find((line) => /shared librar|not found at|ENOENT|Failed to|denied/.test(line));
  return (reason ?? lines[0] ?? '').replace(/^\s*-?\s*/, '').slice(0, 200);
}

/**
 * A browser that runs; close it after use. Throws when none starts, naming each that was tried, why it failed and
 * what to install. A CHROME_PATH that does not start is an error at once: whoever set it wants that one.
 * `more` are flags of the browser besides the usual ones.
 */
export async function openBrowser(more: readonly string[] = []): Promise<Browser> {
  const failures: string[] = [];
  for (const { name, options } of listCandidates()) {
    try {
      // Playwright leaves the sandbox off, as root needs; these tests open no page but their own.
      return await chromium.launch({ headless: true, args: [...flags, ...more], ...(await options()) });
    } catch (error) {
      failures.push(`  ${name}: ${explainFailure(error)}`);
    }
  }
  throw new Error(
    [
      'No browser starts, and the browser tests are never skipped. Tried:',
      ...failures,
      'Do one of these:',
      '  Debian or Ubuntu: apt-get install chromium; or, for the packaged browser, apt-get install libnss3 libnspr4',
      '  macOS or Windows: install Chrome, Edge or Chromium',
      '  or set CHROME_PATH to the program of a Chromium-based browser.',
    ].join('\n'),
  );
}

/**
 * Collects what goes wrong on a page from now on: errors on its console (refusals by the content security policy
 * are among them), uncaught errors, failed or refused requests, and any request to another site.
 */
export function watchFaults(page: Page, origin: string): readonly string[] {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`uncaught: ${error.message}`));
  page.on('requestfailed', (request) => {
    // A page that is left while it still loads is no fault.
    const why = request.failure()?.errorText ?? '';
    if (why !== 'net::ERR_ABORTED') faults.push(`request failed: ${request.url()} (${why})`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`answer ${response.status()}: ${response.url()}`);
  });
  page.on('request', (request) => {
    const { protocol } = new URL(request.url());
    const local = request.url().startsWith(`${origin}/`) || protocol === 'data:' || protocol === 'blob:';
    if (!local) faults.push(`request to another site: ${request.url()}`);
  });
  return faults;
}
