/** What the built shop tells other programs: sitemap, feeds, structured data, pictures for links; and no other site. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { builtShop } from './server.ts';

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demo has faults.');
const { shop, frames } = reading.catalogue;

const files = readdirSync(builtShop, { recursive: true, encoding: 'utf8' }).map((name) =>
  name.replaceAll('\\', '/'),
);
const read = (name: string) => readFileSync(`${builtShop}/${name}`, 'utf8');
const pages = files.filter((name) => name.endsWith('.html')).map((name) => ({ name, html: read(name) }));
const matchAll = (text: string, form: RegExp) => [...text.matchAll(form)].map(([, found = '']) => found);

/** The file that an address of the site leads to, without the slash at its start. */
function fileOf(address: string): string {
  const path = address.slice(shop.address.length + 1);
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
}

describe('the sitemap', () => {
  it('lists each page that does not ask to be left out, by its canonical address, once', () => {
    const listed = matchAll(read('sitemap.xml'), /<loc>([^<]+)<\/loc>/g);
    const canonical = pages
      .filter(({ html }) => !html.includes('content="noindex'))
      .map(({ html }) => matchAll(html, /<link rel="canonical" href="([^"]+)"/g).join());
    expect(listed.toSorted()).toEqual(canonical.toSorted());
    expect(listed.filter((address) => !files.includes(fileOf(address)))).toEqual([]);
  });

  it('is named for robots', () => {
    expect(read('robots.txt')).toContain(`Sitemap: ${shop.address}/sitemap.xml`);
  });
});

describe('the built shop', () => {
  it('names no other site in any attribute: nothing of a visit is told to anyone', () => {
    const outside = pages.flatMap(({ name, html }) => {
      const data = /(<script\b[^>]*application\/(?:ld\+)?json[^>]*>)[\s\S]*?<\/script>/g;
      const values = matchAll(html.replace(data, '$1'), /\s[a-z:-]+="((?:https?:)?\/\/[^"]*)"/gi);
      // Names of XML vocabularies are no addresses to fetch.
      return values
        .filter((value) => !value.startsWith(`${shop.address}/`) && !value.startsWith('http://www.w3.org/'))
        .map((value) => `${name}: ${value}`);
    });
    expect(outside).toEqual([]);
  });

  it('gives its own address only in what is told to other programs', () => {
    const own = new RegExp(`<[^>]*"${shop.address}[^>]*>`, 'g');
    const said = pages.flatMap(({ html }) => html.match(own) ?? []);
    const other = said.filter(
      (tag) => !/^<(?:link rel="(?:canonical|alternate)"|meta property="og:)/.test(tag),
    );
    expect(other).toEqual([]);
  });

  it('loads nothing from elsewhere in styles and scripts', () => {
    const faults = files
      .filter((name) => /\.(?:css|js)$/.test(name))
      .flatMap((name) =>
        (read(name).match(/url\(\s*["']?(?:https?:)?\/\/|(?:fetch|import)\(\s*["'`]https?:/g) ?? []).map(
          (f) => `${name}: ${f}`,
        ),
      );
    expect(faults).toEqual([]);
  });
});

describe('structured data', () => {
  const things = (html: string) =>
    matchAll(html, /<script type="application\/ld\+json">([\s\S]*?)<\/script>/g).flatMap(
      (text) => JSON.parse(text)['@graph'] as Record<string, unknown>[],
    );

  it('is on the page of every frame, with its place and prices that the page shows', () => {
    for (const { id } of frames) {
      const { html } = pages.find(({ name }) => name === `frames/${id}/index.html`) ?? { html: '' };
      const types = things(html).map((thing) => thing['@type']);
      expect(types).toEqual(['ProductGroup', 'BreadcrumbList']);
    }
  });

  it('names the shop at home', () => {
    const home = pages.find(({ name }) => name === 'index.html');
    expect(things(home?.html ?? '').map((thing) => thing['@type'])).toEqual(['Optician']);
  });

  it('names only addresses that are there', () => {
    const addresses = pages.flatMap(({ html }) => [
      ...matchAll(JSON.stringify(things(html)), /"(https:\/\/shop\.example[^"#]*)/g),
      ...matchAll(html, /<meta property="og:image" content="([^"]+)"/g),
    ]);
    expect(addresses.length).toBeGreaterThan(pages.length);
    expect([...new Set(addresses)].filter((address) => !files.includes(fileOf(address)))).toEqual([]);
  });
});

it('has pictures for links of 1200 by 630 pixels', () => {
  const pictures = files.filter((name) => /^share\/.*\.png$/.test(name));
  expect(pictures.length).toBe(frames.length + 1);
  for (const name of pictures) {
    // PNG, ISO/IEC 15948: width and height stand at the start of the first chunk.
    const bytes = readFileSync(`${builtShop}/${name}`);
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([1200, 630]);
    expect(bytes.length).toBeLessThan(100_000);
  }
});

describe('photographs', () => {
  const shown = pages.flatMap(({ name, html }) =>
    matchAll(html, /<picture>([\s\S]*?)<\/picture>/g).map((picture) => ({ name, picture })),
  );

  it('stand on the pages of their frames, with words for those who do not see them', () => {
    const expected = frames.flatMap(({ id, pictures }) =>
      pictures.map(({ alt }) => `frames/${id}/index.html ${alt}`),
    );
    const own = shown.filter(({ picture }) => !picture.includes('card-photo'));
    const found = own.map(({ name, picture }) => `${name} ${matchAll(picture, /alt="([^"]*)"/g).join()}`);
    expect(expected.length).toBeGreaterThan(0);
    expect(found.filter((one) => one.startsWith('frames/'))).toEqual(expected);
  });

  it('come in modern formats and several sizes, none wider than 1200 pixels, and keep their place', () => {
    for (const { picture } of shown) {
      expect(matchAll(picture, /type="image\/(\w+)"/g)).toEqual(['avif', 'webp']);
      const widths = matchAll(picture, / (\d+)w/g).map(Number);
      expect(new Set(widths).size).toBeGreaterThan(1);
      expect(Math.max(...widths)).toBeLessThanOrEqual(1200);
      expect(picture).toMatch(/ width="\d+" height="\d+"/);
    }
  });

  it('stand for the frame in lists, made once for all pages', () => {
    const cards = shown.filter(({ picture }) => picture.includes('card-photo'));
    const pictured = frames.filter(({ pictures }) => pictures.length > 0);
    expect(cards.length).toBeGreaterThan(2 * pictured.length);
    expect(new Set(cards.map(({ picture }) => matchAll(picture, / src="([^"]+)"/g).join())).size).toBe(
      pictured.length,
    );
    for (const { picture } of cards) expect(picture).toContain(' loading="lazy"');
  });

  it('do not carry what a camera wrote into them', () => {
    // A made picture has the digest of how it was made in its name; the owner's file would have none.
    const names = frames.flatMap(({ pictures }) => pictures.map(({ file }) => file.replace(/\.\w+$/, '')));
    const originals = names.flatMap((one) =>
      files.filter((name) => new RegExp(`^_astro/${one}\\.[\\w-]{8}\\.\\w+$`).test(name)),
    );
    expect(originals).toEqual([]);
    const jpegs = files.filter((name) => /^_astro\/.*\.jpe?g$/.test(name));
    // The APP1 segment of Exif (CIPA DC-008) begins so.
    expect(jpegs.filter((name) => readFileSync(`${builtShop}/${name}`).includes('Exif\0\0'))).toEqual([]);
  });
});

describe('the feed of all frames', () => {
  it('is a JSON Feed 1.1 with an item a frame', () => {
    const feed = JSON.parse(read('feeds/frames.json'));
    // jsonfeed.org/version/1.1: required are version, title, items, and an id and a content of each item.
    expect(feed.version).toBe('https://jsonfeed.org/version/1.1');
    expect(feed.title).toBe(shop.name);
    const ids = feed.items.map((item: { id: string; content_text: string }) => item.content_text && item.id);
    expect(ids.toSorted()).toEqual(frames.map(({ id }) => id).toSorted());
  });
});

describe('in a second language', () => {
  it('are feeds of their own, whose links stay in it, named by its pages alone', () => {
    const feed = JSON.parse(read('fr/feeds/frames.json'));
    expect([feed.language, feed.items.length]).toEqual(['fr-CA', frames.length]);
    const urls = [feed.home_page_url, feed.feed_url, ...feed.items.map(({ url }: { url: string }) => url)];
    expect(urls.filter((url) => !url.startsWith(`${shop.address}/fr/`))).toEqual([]);
    const rss = read('fr/feeds/new-frames.xml');
    expect(rss).toContain('<language>fr-CA</language>');
    expect(matchAll(rss, /<link>([^<]*)/g).filter((url) => !url.startsWith(`${shop.address}/fr/`))).toEqual(
      [],
    );
    expect(read('fr/index.html')).toContain('href="/fr/feeds/new-frames.xml"');
    expect(read('fr/index.html')).not.toContain('href="/feeds/');
  });

  it('is the help where there is no page, with a way home', () => {
    expect(read('404.html')).toMatch(/<section[^>]* lang="fr-CA"[^>]*>.*?<a href="\/fr\/"/s);
  });
});
