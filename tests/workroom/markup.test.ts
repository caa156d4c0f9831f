import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escapeText, html, shortened } from '../../src/workroom/markup.ts';

describe('text in a template', () => {
  it('cannot open an element, end an attribute or begin an entity, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const { markup } = html`<p title="${text}">${[text]}</p>`;
        const [, title = '', body = ''] = /^<p title="([^"<]*)">([^<]*)<\/p>$/.exec(markup) ?? [];
        expect(body).toBe(title);
        expect(body).not.toMatch(/&(?!(?:amp|lt|gt|quot|#39);)/);
      }),
    );
  });

  it('reads back as it was, without control characters and marks that turn text round', () => {
    const back = (markup: string) =>
      markup.replace(
        /&(amp|lt|gt|quot|#39);/g,
        (_, name: string) => ({ amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" })[name] ?? '',
      );
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(back(escapeText(text))).toBe(text.replace(/[\u200e\u200f]/g, ''));
      }),
    );
    expect(escapeText('gpj.exe\u202e\u0000\u0007 & <b>')).toBe('gpj.exe &amp; &lt;b&gt;');
  });

  it('leaves nothing for null and false, and markup as it is', () => {
    expect(html`<i>${null}${false}${0}${html`<b>${'&'}</b>`}</i>`.markup).toBe('<i>0<b>&amp;</b></i>');
  });
});

describe('shortened text', () => {
  it('is never longer than asked for and ends in an ellipsis only where something is missing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 1, max: 40 }), (text, most) => {
        const short = shortened(text, most);
        expect([...short].length).toBeLessThanOrEqual(most);
        expect(short === text.trim() || short.endsWith('…')).toBe(true);
      }),
    );
  });
});
