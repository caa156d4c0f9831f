/**
 * Astro integration that writes the worker of the workroom's page once the shop is built. The worker's scope is that
 * page alone. It keeps the page and the files that it loads, by name, in a store that is named for their content; orders
 * never go through it, since the page asks for nothing.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { offlineWorker } from './offlineWorker.ts';
import { basePathOf } from './underBase.ts';

const PAGE = 'workroom/index.html';

/** Addresses of the built files that the page and its parts name, that of the page itself first. */
export function filesOfPage(dist: string, base = ''): readonly string[] {
  const found = new Set<string>();
  const visit = (text: string) => {
    for (const [name] of text.matchAll(/[\w.-]+\.(?:js|css|svg)\b/g)) {
      const path = [`_astro/${name}`, name].find((one) => existsSync(join(dist, one)));
      if (path === undefined || found.has(path)) continue;
      found.add(path);
      visit(readFileSync(join(dist, path), 'utf8'));
    }
  };
  // The shop's data names files of other pages.
  visit(readFileSync(join(dist, PAGE), 'utf8').replace(/<script id="workroom-data"[\s\S]*?<\/script>/, ''));
  return ['workroom/', ...[...found].sort()].map((path) => `${base}/${path}`);
}

/** The worker's text for a built shop. */
export function workerText(dist: string, base = ''): string {
  const files = filesOfPage(dist, base);
  const digest = createHash('sha256')
    .update(String(offlineWorker))
    .update(readFileSync(join(dist, PAGE)));
  for (const file of files.slice(1)) digest.update(readFileSync(join(dist, file.slice(base.length))));
  const name = `bevelbook-workroom-${digest.digest('hex').slice(0, 16)}`;
  return `(${offlineWorker})(self, ${JSON.stringify(name)}, ${JSON.stringify(files)});\n`;
}

export function offlineWorkroom(): AstroIntegration {
  let base = '';
  return {
    name: 'bevelbook-offline-workroom',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = basePathOf(config.site);
      },
      'astro:build:done': ({ dir }) => {
        const dist = fileURLToPath(dir);
        if (existsSync(join(dist, PAGE)))
          writeFileSync(join(dist, 'workroom/worker.js'), workerText(dist, base));
      },
    },
  };
}
