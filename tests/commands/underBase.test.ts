import { describe, expect, it } from 'vitest';
import { basePathOf, movePage } from '../../src/commands/underBase.ts';

describe('a page below a path', () => {
  it.each([
    ['a link', '<a href="/frames/dunlin/">', '<a href="/shop/frames/dunlin/">'],
    ['home', '<a class="x" href="/">', '<a class="x" href="/shop/">'],
    ['data', '<div data-shop="/shop-data/1.json">', '<div data-shop="/shop/shop-data/1.json">'],
    ['a page named like the path', '<a href="/shop/">', '<a href="/shop/shop/">'],
    [
      'pictures by width',
      '<img srcset="/a.png 1x, /b.png 2x">',
      '<img srcset="/shop/a.png 1x, /shop/b.png 2x">',
    ],
    [
      'a page that leads on',
      '<meta http-equiv="refresh" content="0; url=/frames/dunlin/">',
      '<meta http-equiv="refresh" content="0; url=/shop/frames/dunlin/">',
    ],
    [
      'a script',
      '<script src="/x.js">"/a" <a href="/b"></script>',
      '<script src="/shop/x.js">"/a" <a href="/b"></script>',
    ],
  ])('has %s below it', (_, html, moved) => {
    expect(movePage(html, '/shop')).toBe(moved);
  });

  it.each([
    ['what Astro has put there', '<script src="/shop/_astro/x.js"></script>'],
    [
      'another site',
      '<a href="//host/x"> <a href="https://host/x"> <a href="#part"> <a href="mailto:a@b.example">',
    ],
    ['a drawing', '<path d="/1 2" />'],
    ['text', '<p>A shop at /frames/ "/x"</p>'],
    ['a comment', '<!-- <a href="/x"> -->'],
  ])('leaves %s as it is', (_, html) => {
    expect(movePage(html, '/shop')).toBe(html);
  });
});

describe('the path of an address', () => {
  it.each([
    [undefined, ''],
    ['https://shop.example', ''],
    ['https://shop.example/', ''],
    ['https://host.example/a/b', '/a/b'],
    ['https://host.example/a/', '/a'],
  ])('%s has %j', (address, path) => {
    expect(basePathOf(address)).toBe(path);
  });
});
