/** A QR code as SVG, its dark modules in one path. */
import { qrCode } from '../../order/slip.ts';
import { html, type Markup } from '../markup.ts';

/** The code of an ASCII text, `sizeMm` wide with its quiet zone. Throws a RangeError for other text. */
export function qrDrawing(text: string, sizeMm: number, label: string): Markup {
  const rows = qrCode(text);
  const modules = rows.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : ''))).join('');
  return html`<svg class="qr" width="${sizeMm}mm" height="${sizeMm}mm" viewBox="0 0 ${rows.length} ${rows.length}" role="img" aria-label="${label}" shape-rendering="crispEdges"><path d="${modules}"/></svg>`;
}
