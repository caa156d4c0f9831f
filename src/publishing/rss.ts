/** The feed of new frames: RSS 2.0, with the atom:link to itself that its readers expect. */
import { element, xmlText } from './xml.ts';

export interface Channel {
  readonly title: string;
  readonly description: string;
  readonly language: string;
  /** Whole addresses of the site and of the feed. */
  readonly link: string;
  readonly self: string;
}

export interface Item {
  readonly title: string;
  readonly link: string;
  readonly description: string;
  /** Civil day. */
  readonly day: string;
}

/** A civil day as RSS writes it (RFC 822, four digits a year): its midnight in universal time. */
export function rssDate(day: string): string {
  return new Date(`${day}T00:00:00Z`).toUTCString();
}

/** The text of the feed. */
export function rss({ title, description, language, link, self }: Channel, items: readonly Item[]): string {
  const entries = items.map((item) =>
    [
      '<item>',
      element('title', item.title),
      element('link', item.link),
      `<guid isPermaLink="true">${xmlText(item.link)}</guid>`,
      element('description', item.description),
      element('pubDate', rssDate(item.day)),
      '</item>',
    ].join(''),
  );
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<rss version="2.0" xmlns:atom="http://www.w3.org/2005/Atom"><channel>',
    element('title', title) + element('link', link) + element('description', description),
    element('language', language),
    `<atom:link href="${xmlText(self)}" rel="self" type="application/rss+xml"/>`,
    ...entries,
    '</channel></rss>',
    '',
  ].join('\n');
}
