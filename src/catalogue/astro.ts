/**
 * Gives the shop to Astro's pages as `virtual:bevelbook/catalogue`. A build with faults in the content is refused
 * with the text of `npm run check`; the development server shows that text in terminal and browser, and reloads
 * the page once the file is mended.
 */
import { relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration, AstroIntegrationLogger, ViteUserConfig } from 'astro';
import type { Catalogue } from './catalogue.ts';
import { printFaults } from './printFaults.ts';
import type { Reading } from './shopReading.ts';

type VitePlugin = Extract<NonNullable<ViteUserConfig['plugins']>[number], { name: string }>;

const NAME = 'virtual:bevelbook/catalogue';
const RESOLVED = `\0${NAME}`;

/** Editors save in several steps, and a change of branch touches many files: one reading after the last of them. */
const SETTLE_MS = 60;

/** A refusal without a stack: what is wrong lies in the content, not in a program. */
function refusal(text: string): Error {
  const error = new Error(text);
  error.name = 'Content';
  error.stack = '';
  return error;
}

type Made = { readonly address: string } | { readonly fault: string };

/**
 * Pages run in the process that reads the shop, and take it from there: as part of their code it would be bundled,
 * which for a shop of thousands of frames takes hundreds of megabytes. As it was read, all languages share its figures,
 * and so what pages work out from them.
 */
const HANDED = 'bevelbookCatalogue';
const handedOver = globalThis as unknown as Record<string, readonly Catalogue[]>;
const CODE = `export const [catalogue, ...translations] = globalThis.${HANDED};`;

/** The shop as the module needs it, made once and again after `forget`. */
function catalogueModule(load: () => Reading) {
  let made: Made | null = null;
  const make = (): Made => {
    const reading = load();
    if (!reading.ok) return { fault: printFaults(reading.faults) };
    const { catalogue, translations } = reading;
    handedOver[HANDED] = [catalogue, ...translations];
    return { address: catalogue.shop.address };
  };
  return {
    read: () => {
      made ??= make();
      return made;
    },
    forget: () => {
      made = null;
    },
  };
}

type Module = ReturnType<typeof catalogueModule>;

function servePlugin(
  root: string,
  folder: string,
  module: Module,
  logger: AstroIntegrationLogger,
): VitePlugin {
  return {
    name: 'bevelbook-catalogue',
    resolveId: (id) => (id === NAME ? RESOLVED : undefined),
    load(id) {
      if (id !== RESOLVED) return undefined;
      const made = module.read();
      if ('fault' in made) throw refusal(made.fault);
      return CODE;
    },
    configureServer(server) {
      const { client, ...servers } = server.environments;
      let settling: ReturnType<typeof setTimeout> | undefined;
      // At once: where a page shows an error, Astro reloads it with the first change, and must find new content.
      const forget = () => {
        module.forget();
        for (const { moduleGraph, hot } of Object.values(servers)) {
          const node = moduleGraph.getModuleById(RESOLVED);
          if (node) moduleGraph.invalidateModule(node);
          hot.send({ type: 'full-reload' });
        }
      };
      const reload = () => {
        const made = module.read();
        if ('fault' in made) logger.error(`\n${made.fault}`);
        else logger.info('Content read again.');
        client.hot.send({ type: 'full-reload' });
      };
      // The whole root is watched already, another folder is not. Markdown handed to addWatchFile would be parsed by Astro as well.
      if (relative(root, folder).startsWith('..')) server.watcher.add(folder);
      server.watcher.on('all', (_event, path) => {
        const inside = relative(folder, path);
        if (
          inside.startsWith('..') ||
          inside === path ||
          inside.split(sep).some((part) => part.startsWith('.'))
        )
          return;
        forget();
        clearTimeout(settling);
        settling = setTimeout(reload, SETTLE_MS);
      });
    },
  };
}

/**
 * The Astro integration: the virtual module, and `site` from the shop's address. `load` reads the content folder,
 * which is `folder` from the project's root.
 */
export function shopContent(load: (folder: string) => Reading, folderName = 'content'): AstroIntegration {
  return {
    name: 'bevelbook-content',
    hooks: {
      'astro:config:setup': ({ config, command, updateConfig, logger }) => {
        const root = fileURLToPath(config.root);
        const folder = resolve(root, folderName);
        const module = catalogueModule(() => load(folder));
        const made = module.read();
        if ('fault' in made) {
          if (command === 'build') {
            // Thrown, Astro would call it an unhandled error of this integration.
            console.error(made.fault);
            process.exit(1);
          }
          logger.error(`\n${made.fault}`);
        }
        if ('address' in made) updateConfig({ site: made.address });
        updateConfig({ vite: { plugins: [servePlugin(root, folder, module, logger)] } });
      },
    },
  };
}
