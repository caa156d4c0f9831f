/**
 * Follows every internal link of a served site: pages, pictures (srcset too), scripts, islands, style sheets and
 * what they load. Links to other sites are left alone.
 */

/** What a crawl saw: the HTML pages by path, and one text for each link that leads nowhere or goes a long way. */
export interface Crawl {
  readonly pages: ReadonlyMap<string, string>;
  readonly visited: ReadonlySet<string>;
  readonly faults: readonly string[];
}

interface Link {
  readonly from: string;
  readonly to: URL;
}

function decodeEntities(text: string): string {
  return text.replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&amp;', '&');
}

function linksOfPage(html: string): string[] {
  const markup = html
    .replace(/<!--[\s\S]*?-->/g, '')
    .replace(/(<(script|style)\b[^>]*>)[\s\S]*?<\/\2>/g, '$1');
  const links: string[] = [];
  for (const [, name = '', value = ''] of markup.matchAll(/\s([a-z-]+)="([^"]*)"/g)) {
    const text = decodeEntities(value);
    if (/^(href|src|poster|component-url|renderer-url)$/.test(name)) links.push(text);
    if (/^(srcset|imagesrcset)$/.test(name)) {
      links.push(...text.split(',').map((part) => part.trim().split(/\s+/)[0] ?? ''));
    }
  }
  return links;
}

function linksOfStyle(css: string): string[] {
  return [...css.matchAll(/url\(\s*["']?([^"')]+)["']?\s*\)/g)].map(([, link = '']) => link);
}

function hasAnchor(html: string, anchor: string): boolean {
  return anchor === '' || anchor === 'top' || html.includes(` id="${decodeURIComponent(anchor)}"`);
}

/** Crawls the site at `origin` from the path `start`; finds every page that links lead to. */
export async function crawl(origin: string, start = '/'): Promise<Crawl> {
  const pages = new Map<string, string>();
  const visited = new Set<string>();
  const faults: string[] = [];
  const anchored: Link[] = [];
  const queue: Link[] = [{ from: '(start)', to: new URL(start, origin) }];
  for (let link = queue.pop(); link !== undefined; link = queue.pop()) {
    const { from, to } = link;
    if (to.hash) anchored.push(link);
    if (visited.has(to.pathname)) continue;
    visited.add(to.pathname);
    const response = await fetch(new URL(to.pathname, origin), { redirect: 'manual' });
    const body = await response.text();
    if (response.status !== 200) {
      const detour = response.headers.get('location');
      faults.push(
        `${from} links to ${to.pathname}: answer ${response.status}${detour ? `, write ${detour}` : ''}`,
      );
      continue;
    }
    const type = response.headers.get('content-type') ?? '';
    if (type.startsWith('text/html')) pages.set(to.pathname, body);
    const found = type.startsWith('text/html')
      ? linksOfPage(body)
      : type.startsWith('text/css')
        ? linksOfStyle(body)
        : [];
    for (const text of found) {
      const next = URL.parse(text, new URL(to.pathname, origin));
      if (next === null) faults.push(`${to.pathname} links to "${text}": not an address`);
      else if (next.origin === origin) queue.push({ from: to.pathname, to: next });
    }
  }
  for (const { from, to } of anchored) {
    const html = pages.get(to.pathname);
    if (html !== undefined && !hasAnchor(html, to.hash.slice(1))) {
      faults.push(`${from} links to ${to.pathname}${to.hash}: no element has that id`);
    }
  }
  return { pages, visited, faults };
}
