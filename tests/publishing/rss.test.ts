import { expect, it } from 'vitest';
import { rss, rssDate } from '../../src/publishing/rss.ts';

it('writes days as RFC 822 does', () => {
  // RFC 822 section 5.1 with the four-digit year of RFC 1123; 2026-11-25 is a Wednesday.
  expect(rssDate('2026-11-25')).toBe('Wed, 25 Nov 2026 00:00:00 GMT');
});

it('holds any text, and has what RSS 2.0 requires of a channel and an item', () => {
  const channel = {
    title: 'A & B',
    description: 'New <frames>',
    language: 'en',
    link: 'https://shop.example/',
    self: 'https://shop.example/feeds/new-frames.xml?a=1&b=2',
  };
  const item = {
    title: '"Ruff"',
    link: 'https://shop.example/frames/ruff/',
    description: '<b>',
    day: '2026-11-25',
  };
  expect(rss(channel, [item])).toMatchInlineSnapshot(`
    "<?xml version="1.0" encoding="UTF-8"?>
    <rss version="2.0" xmlns:atom="http://www.w3.org/2005/Atom"><channel>
    <title>A &amp; B</title><link>https://shop.example/</link><description>New &lt;frames&gt;</description>
    <language>en</language>
    <atom:link href="https://shop.example/feeds/new-frames.xml?a=1&amp;b=2" rel="self" type="application/rss+xml"/>
    <item><title>&quot;Ruff&quot;</title><link>https://shop.example/frames/ruff/</link><guid isPermaLink="true">https://shop.example/frames/ruff/</guid><description>&lt;b&gt;</description><pubDate>Wed, 25 Nov 2026 00:00:00 GMT</pubDate></item>
    </channel></rss>
    "
  `);
});
