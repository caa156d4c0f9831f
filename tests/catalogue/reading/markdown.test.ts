import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { renderMarkdown } from '../../../src/catalogue/reading/markdown.ts';

describe('Markdown', () => {
  it.each([
    ['a **b**', '<p>a <strong>b</strong></p>\n'],
    ['<b onclick="x()">a</b>', '<p>&lt;b onclick=&quot;x()&quot;&gt;a&lt;/b&gt;</p>\n'],
    ['<script>x()</script>', '<p>&lt;script&gt;x()&lt;/script&gt;</p>\n'],
    ['[a](javascript:x)', '<p>[a](javascript:x)</p>\n'],
    ['', ''],
    ['  \n', ''],
  ])('%j becomes HTML without anything that acts', (body, html) => {
    expect(renderMarkdown(body)).toBe(html);
  });

  it('aligns the cells of a table by class, since inline styles are refused', () => {
    const html = renderMarkdown('|a|b|\n|:-|-:|\n|1|2|\n');
    expect(html).toContain('<th class="align-left">a</th>');
    expect(html).toContain('<td class="align-right">2</td>');
    expect(html).not.toContain('style=');
  });

  it('law: no text brings in a script, a style or an event handler', () => {
    const pieces = fc.constantFrom(
      '<',
      '>',
      '/',
      'script',
      'img',
      ' ',
      'onerror=',
      '"',
      "'",
      'x',
      '[',
      ']',
      '(',
      ')',
      '!',
      'javascript:',
      '\n',
      '|',
      '-',
      ':',
      '`',
      '&#106;',
    );
    fc.assert(
      fc.property(fc.array(pieces), (all) => {
        const tags = renderMarkdown(all.join('')).match(/<[^>]*>/g) ?? [];
        expect(tags.filter((tag) => /^<script|<style|\sstyle=|\son\w+=|"javascript:/i.test(tag))).toEqual([]);
      }),
    );
  });
});
