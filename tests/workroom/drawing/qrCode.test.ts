import decodeQR from 'qr/decode.js';
import { expect, test } from 'vitest';
import { qrDrawing } from '../../../src/workroom/drawing/qrCode.ts';

test('the code reads back as the text that went in', () => {
  const { markup } = qrDrawing('482109375562 2', 26, 'Order');
  const size = Number(/viewBox="0 0 (\d+) /.exec(markup)?.[1]);
  const scale = 4;
  const side = size * scale;
  const data = new Uint8Array(side * side * 4).fill(255);
  for (const [, x, y] of markup.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
    for (let i = 0; i < scale * scale; i++) {
      const at = ((Number(y) * scale + Math.floor(i / scale)) * side + Number(x) * scale + (i % scale)) * 4;
      data.fill(0, at, at + 3);
    }
  expect(decodeQR({ width: side, height: side, data })).toBe('482109375562 2');
});
