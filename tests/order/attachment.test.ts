import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attach, attachmentType } from '../../src/order/attachment.ts';
import { fromBase64, toBase64 } from '../../src/order/base64.ts';
import { MOST_ATTACHED_BYTES } from '../../src/order/limits.ts';
import { PICTURE } from './orders.ts';

const ascii = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

describe('a file', () => {
  it.each([
    ['image/jpeg', PICTURE],
    // PNG specification, section 5.2: the eight bytes of the signature
    ['image/png', Uint8Array.from([137, 80, 78, 71, 13, 10, 26, 10, 0])],
    // RIFF container, RFC 9649 section 2.4
    ['image/webp', ascii('RIFF\x24\x00\x00\x00WEBPVP8 ')],
    ['image/heic', ascii('\x00\x00\x00\x18ftypheic\x00\x00')],
    ['application/pdf', ascii('%PDF-1.7\n')],
    [null, ascii('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>')],
    [null, ascii('GIF89a')],
    [null, ascii('RIFF\x24\x00\x00\x00AVI ')],
    [null, new Uint8Array([0xff, 0xd8])],
    [null, new Uint8Array()],
  ])('is told to be %s by its first bytes', (type, bytes) => {
    expect(attachmentType(bytes)).toBe(type);
  });

  it('is attached under its name in plain letters, or refused with a reason', () => {
    expect(attach('my\u202e scan\n.jpg', PICTURE, 0)).toEqual({
      name: 'my scan .jpg',
      type: 'image/jpeg',
      base64: toBase64(PICTURE),
    });
    expect(attach('a.jpg', new Uint8Array(), 0)).toBe('empty');
    expect(attach('a.jpg', ascii('<html>'), 0)).toBe('type');
    expect(attach('a.jpg', PICTURE, MOST_ATTACHED_BYTES)).toBe('too-large');
  });
});

describe('base64', () => {
  it('gives back every bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(toBase64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
        expect(fromBase64(toBase64(bytes))).toEqual(bytes);
      }),
    );
    const large = new Uint8Array(100_000).map((_, at) => at * 7);
    expect(fromBase64(toBase64(large))).toEqual(large);
  });

  it('is refused in any other form', () => {
    for (const text of ['A', 'AAA', 'AA==AA==', 'AA=A', ' AAAA', 'AA\nAA', 'AA-_', 'é==='])
      expect(fromBase64(text)).toBeNull();
  });
});
