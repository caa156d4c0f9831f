import { describe, expect, it } from 'vitest';
import { file, printed, printedAfter, shopWith, textOf } from '../faultyShop.ts';

const linked = (link: string) => printedAfter('pages/returns.md', 'Write first.', `Write [first](${link}).`);

describe('a link in a text', () => {
  it.each([
    '/',
    '/frames/',
    '/frames/dunlin/',
    '/frames/dunlin/#colours',
    '/lenses/coatings/hard/',
    '/collections/marsh/',
    '/returns/',
    '../frames/dunlin/',
    './',
    '#below',
    'https://elsewhere.example/frames/dunlyn/',
    'mailto:bench@shop.example',
    'tel:+12075550142',
    '/papers/terms.pdf',
  ])('may lead to %s', (link) => {
    expect(linked(link)).toBe('no fault');
  });

  it('that leads nowhere is shown in its file', () => {
    expect(linked('/frames/dunlyn/')).toMatchInlineSnapshot(`
      "
      content/pages/returns.md:7:15 this link leads nowhere [dead-link]
        7 | Write [first](/frames/dunlyn/).
          |               ^^^^^^^^^^^^^^^
        expected: the address of a page of the site, such as /frames/
        found:    /frames/dunlyn/
        to do:    Did you mean /frames/dunlin/?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it.each([
    ['/returns', '/returns/'],
    ['../returns.md', '/returns/'],
    ['../frames/dunlin.md', '/frames/dunlin/'],
    ['/frame/dunlin/', '/frames/dunlin/'],
    ['/retuns/#how', '/returns/'],
  ])('as %s is told that %s was meant', (link, meant) => {
    expect(linked(link)).toContain(`Did you mean ${meant}?`);
  });

  it('is looked at in the story of a frame, and in its notes below', () => {
    const story = `${textOf('frames/dunlin.md')}\nSee [there][1].\n\n[1]: /nowhere/at/all/\n`;
    expect(printed(shopWith(file('frames/dunlin.md', story)))).toContain('/nowhere/at/all/');
  });

  it('may begin with another language of the shop', () => {
    const page = textOf('pages/returns.md').replace('first', '[first](/fr/returns/)');
    const files = [
      file('pages/returns.md', page),
      file('words/fr-CA/page.yaml', 'page: { title: "{name}" }\n'),
    ];
    expect(printed(shopWith(...files))).not.toContain('[dead-link]');
  });

  it('is written as at the root where the site lies below another', () => {
    const shop = textOf('shop.yaml').replace(/address: .*/, 'address: https://host.example/shop');
    const page = (link: string) =>
      printed(
        shopWith(
          file('shop.yaml', shop),
          file('pages/returns.md', textOf('pages/returns.md').replace('first', `[first](${link})`)),
        ),
      );
    expect([page('/frames/'), page('../frames/')]).toEqual(['no fault', 'no fault']);
    expect(page('/shop/frames/')).toContain('Write /frames/: the build puts /shop before it.');
  });

  it('in code is a sample, not a link', () => {
    expect(printedAfter('pages/returns.md', 'Write first.', '`[a](/nowhere/)`')).toBe('no fault');
  });
});
