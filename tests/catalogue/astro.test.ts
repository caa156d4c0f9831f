import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { shopContent } from '../../src/catalogue/astro.ts';
import type { Catalogue } from '../../src/catalogue/catalogue.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { printFaults } from '../../src/catalogue/printFaults.ts';
import { shopFolder } from './faultyShop.ts';

const RESOLVED = '\0virtual:bevelbook/catalogue';

let root: string;
let frame: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'site-'));
  cpSync(shopFolder, join(root, 'content'), { recursive: true });
  frame = join(root, 'content/frames/dunlin.md');
});

afterEach(() => {
  rmSync(root, { recursive: true, force: true });
  vi.restoreAllMocks();
});

function spoil(from: string, to: string) {
  writeFileSync(frame, readFileSync(frame, 'utf8').replace(from, to));
}

/** Runs the integration as Astro does; what it adds to the settings, and what it says. */
function setUp(command: 'build' | 'dev') {
  const said: string[] = [];
  const settings: { site?: string; vite?: { plugins: unknown[] } } = {};
  const hook = shopContent(loadCatalogue).hooks['astro:config:setup'] as (options: unknown) => void;
  const say = (text: string) => said.push(text);
  hook({
    command,
    config: { root: pathToFileURL(`${root}/`) },
    updateConfig: (more: object) => Object.assign(settings, more),
    logger: { error: say, info: say },
  });
  const plugin = settings.vite?.plugins[0] as {
    resolveId: (id: string) => string | undefined;
    load: (id: string) => string | undefined;
    configureServer: (server: unknown) => void;
  };
  return { settings, said, plugin };
}

/** The shops that the module holds when it is run. */
const held = (code = ''): readonly Catalogue[] => new Function(code.replace(/^export .* = /, 'return '))();

/** A development server as far as the plugin knows it. */
function server() {
  const sent: string[] = [];
  const forgotten: string[] = [];
  let onChange = (_event: string, _path: string) => {};
  const environment = (name: string) => ({
    moduleGraph: {
      getModuleById: (id: string) => ({ id }),
      invalidateModule: ({ id }: { id: string }) => forgotten.push(`${name} ${id}`),
    },
    hot: { send: ({ type }: { type: string }) => sent.push(`${name} ${type}`) },
  });
  return {
    sent,
    forgotten,
    change: (path: string) => onChange('change', path),
    environments: { client: environment('client'), ssr: environment('ssr') },
    watcher: {
      on: (_event: string, listener: typeof onChange) => {
        onChange = listener;
      },
    },
  };
}

describe('the module virtual:bevelbook/catalogue', () => {
  it('holds the whole catalogue, and the site has its address', () => {
    const { plugin, settings } = setUp('build');
    expect(plugin.resolveId('virtual:bevelbook/catalogue')).toBe(RESOLVED);
    expect(plugin.resolveId('virtual:other')).toBeUndefined();
    expect(settings.site).toBe('https://quay.example');
    const reading = loadCatalogue(join(root, 'content'));
    expect(held(plugin.load(RESOLVED))).toEqual(reading.ok && [reading.catalogue]);
  });
});

describe('a build', () => {
  it('of a shop with a fault ends with the text of the check', () => {
    spoil('massG: 22', 'massG: heavy');
    const printed: string[] = [];
    vi.spyOn(console, 'error').mockImplementation((text: string) => printed.push(text));
    vi.spyOn(process, 'exit').mockImplementation((status) => {
      throw new Error(`exit ${status}`);
    });
    expect(() => setUp('build')).toThrow('exit 1');
    const reading = loadCatalogue(join(root, 'content'));
    expect(printed).toEqual([reading.ok ? '' : printFaults(reading.faults)]);
  });
});

describe('the development server', () => {
  it('starts with a fault, says it, and shows it in the page', () => {
    spoil('massG: 22', 'massG: heavy');
    const { plugin, said } = setUp('dev');
    expect(said.join()).toContain('content/frames/dunlin.md:12:8 massG');
    expect(() => plugin.load(RESOLVED)).toThrow('content/frames/dunlin.md:12:8 massG');
  });

  it('forgets at once what it read when a content file changes, and reloads the page', async () => {
    const { plugin, said } = setUp('dev');
    const running = server();
    plugin.configureServer(running);
    expect(held(plugin.load(RESOLVED))[0]?.frames[0]?.priceMinor).toBe(14900);
    spoil('price: "149.00"', 'price: "151.00"');
    running.change(frame);
    expect(running.forgotten).toEqual([`ssr ${RESOLVED}`]);
    expect(held(plugin.load(RESOLVED))[0]?.frames[0]?.priceMinor).toBe(15100);
    await vi.waitFor(() => expect(running.sent).toEqual(['ssr full-reload', 'client full-reload']));
    expect(said).toEqual(['Content read again.']);
  });

  it('says a new fault, and recovers when the file is mended', async () => {
    const { plugin, said } = setUp('dev');
    const running = server();
    plugin.configureServer(running);
    spoil('massG: 22', 'massG: heavy');
    running.change(frame);
    await vi.waitFor(() => expect(said.join()).toContain('massG'));
    expect(() => plugin.load(RESOLVED)).toThrow('massG');
    spoil('massG: heavy', 'massG: 23');
    running.change(frame);
    expect(held(plugin.load(RESOLVED))[0]?.frames[0]?.massG).toBe(23);
    await vi.waitFor(() => expect(said.at(-1)).toBe('Content read again.'));
  });

  it('does not mind other files, nor those that editors hide', () => {
    const { plugin } = setUp('dev');
    const running = server();
    plugin.configureServer(running);
    running.change(join(root, 'src/pages/index.astro'));
    running.change(join(root, 'content/frames/.dunlin.md.swp'));
    expect(running.forgotten).toEqual([]);
  });
});
