/**
 * Astro integration that puts a built site below a path of its host: the path of the shop's address, or `--base`. All
 * pages are made as if at the root, so that no page has to think of it; here the addresses in their attributes get the
 * path, files under _astro get it from Astro, and scripts in the browser from siteHref. In development the site lies at
 * the root.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** `/shop` of `https://example.org/shop`; '' at the root. */
export function basePathOf(address: string | undefined): string {
  return address === undefined ? '' : new URL(address).pathname.replace(/\/+$/, '');
}

/** Scripts and styles keep their text, whose digest is in the page's policy; only what their tags name is moved. */
const PARTS = /<!--[\s\S]*?-->|(<(script|style)\b[^>]*>)[\s\S]*?<\/\2>|<[a-z][^>]*>/gi;

function movedTag(tag: string, base: string): string {
  const assets = `${base}/_astro/`;
  return tag
    .replace(/(\s[\w:-]+=")(\/(?!\/)[^"]*)/g, (whole, name: string, value: string) =>
      value.startsWith(assets) || /\s(?:d|content)="$/i.test(name) ? whole : `${name}${base}${value}`,
    )
    .replace(/(\s(?:image)?srcset=")([^"]*)/gi, (_, name: string, list: string) => {
      const moved = list.replace(/(,\s*)(\/(?!\/)\S*)/g, (item, comma: string, one: string) =>
        one.startsWith(assets) ? item : `${comma}${base}${one}`,
      );
      return `${name}${moved}`;
    })
    .replace(/(\scontent="\d+;\s*url=)(\/(?!\/))/gi, `$1${base}$2`);
}

/** The page with every address of the site in an attribute below `base`. */
export function movePage(html: string, base: string): string {
  return html.replace(PARTS, (part, opening: string | undefined) => {
    if (part.startsWith('<!--')) return part;
    if (opening === undefined) return movedTag(part, base);
    return movedTag(opening, base) + part.slice(opening.length);
  });
}

export function underBase(): AstroIntegration {
  let base = '';
  return {
    name: 'bevelbook-under-base',
    hooks: {
      'astro:config:setup': ({ command, config, updateConfig }) => {
        if (command === 'build') base = basePathOf(config.site);
        if (base === '') return;
        const define = { BEVELBOOK_BASE: JSON.stringify(base) };
        updateConfig({
          build: { assetsPrefix: base },
          vite: { environments: { client: { define } } },
        });
      },
      'astro:build:done': ({ dir }) => {
        if (base === '') return;
        const dist = fileURLToPath(dir);
        for (const name of readdirSync(dist, { recursive: true, encoding: 'utf8' })) {
          if (!name.endsWith('.html')) continue;
          const path = join(dist, name);
          writeFileSync(path, movePage(readFileSync(path, 'utf8'), base));
        }
      },
    },
  };
}
