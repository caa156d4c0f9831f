/**
 * How papers look, on screen and printed: ink on paper, thin rules, figures of one width. A page is laid out within
 * 186 by 260 mm, which both A4 and US Letter hold inside the margins below.
 */
export const PRINT_STYLE = `
@page { margin: 9mm 12mm; }
.paper {
  box-sizing: border-box;
  inline-size: 186mm;
  block-size: 260mm;
  overflow: hidden;
  display: flex;
  flex-direction: column;
  gap: 2.5mm;
  margin: 6mm auto;
  padding: 0;
  color: #1b2430;
  background: #fff;
  font: 9pt/1.32 Seravek, "Gill Sans Nova", Ubuntu, Calibri, "Source Sans 3", "Noto Sans", "Liberation Sans", system-ui, sans-serif;
  font-variant-numeric: tabular-nums lining-nums;
  -webkit-print-color-adjust: exact;
  print-color-adjust: exact;
}
.paper > * { flex: none; }
.paper * { box-sizing: border-box; overflow-wrap: anywhere; }
.paper p, .paper h1, .paper h2, .paper ul, .paper dl, .paper dd, .paper figure { margin: 0; padding: 0; }
.paper header { display: flex; justify-content: space-between; gap: 6mm; border-block-end: 0.5mm solid #1b2430; padding-block-end: 1.5mm; }
.paper .head { flex: 1; }
.paper .shop { font-size: 8.5pt; letter-spacing: 0.03em; color: #535b62; }
.paper h1, .paper h2, .paper .to { font-family: "Iowan Old Style", "Palatino Linotype", Palatino, "URW Palladio L", P052, "Book Antiqua", Georgia, "Liberation Serif", serif; }
.paper h1 { font-size: 19pt; line-height: 1.15; font-weight: 600; }
.paper .job { display: flex; flex-wrap: wrap; gap: 0 5mm; font-size: 10pt; }
.paper .job > b:first-child { font-size: 11.5pt; letter-spacing: 0.02em; }
.paper h2 { font-size: 10.5pt; font-weight: 600; margin-block-end: 0.8mm; border-block-end: 0.2mm solid #b9b2a0; }
.paper footer { margin-block-start: auto; border-block-start: 0.2mm solid #b9b2a0; padding-block-start: 1mm; font-size: 7.5pt; color: #535b62; }
.paper .columns { display: grid; grid-template-columns: 1fr 1fr; align-items: start; gap: 3mm 6mm; }
.paper .notes-columns { columns: 2; column-gap: 7mm; font-size: 9.6pt; }
.paper .notes-columns section { break-inside: avoid; margin-block-end: 3mm; }
.paper dl > div { display: grid; grid-template-columns: 33mm 1fr; gap: 2mm; }
.paper dt { color: #535b62; }
.paper .strip dl { display: grid; grid-template-columns: 1fr 1fr; gap: 0 6mm; }
.paper .strip dl > div { grid-template-columns: 27mm 1fr; }
.paper table { inline-size: 100%; border-collapse: collapse; }
.paper th, .paper td { text-align: start; vertical-align: top; padding: 0.55mm 1.5mm 0.55mm 0; border-block-end: 0.15mm solid #d8d2c2; font-weight: 400; }
.paper thead th { font-size: 7.5pt; color: #535b62; border-block-end: 0.3mm solid #1b2430; }
.paper tbody th { color: #1b2430; }
.paper .fill td, .paper .fill tbody th { padding-block: 1.25mm; }
.paper .fill td:empty { border-inline-start: 0.15mm solid #d8d2c2; }
.paper .sides th:first-child { inline-size: 38mm; color: #535b62; }
.paper .sides td { inline-size: 74mm; }
.paper .money td, .paper .money thead th:not(:first-child) { text-align: end; white-space: nowrap; }
.paper .receipt td:nth-child(2), .paper .receipt thead th:nth-child(2) { text-align: start; white-space: normal; inline-size: 34mm; }
.paper .items { font-size: 8.1pt; table-layout: fixed; }
.paper .items th, .paper .items td { padding-block: 0.4mm; }
.paper .items small { color: #535b62; font-size: 6.8pt; }
.paper .items th:first-child { inline-size: 34mm; }
.paper .by-eye th:nth-child(2), .paper .by-eye th:nth-child(6) { inline-size: 15mm; }
.paper .by-eye th:nth-child(4), .paper .by-eye th:nth-child(8) { inline-size: 16mm; }
.paper .by-eye th:nth-child(3), .paper .by-eye th:nth-child(7) { inline-size: 24mm; }
.paper .by-eye td:nth-child(6) { border-inline-start: 0.3mm solid #1b2430; padding-inline-start: 1.5mm; }
.paper .of-pair th:first-child, .paper .read th:first-child { inline-size: 27mm; }
.paper .of-pair th:nth-child(2) { inline-size: 13mm; }
.paper .items.fill td, .paper .items.fill tbody th { block-size: 6.5mm; padding-block: 0.4mm; }
.paper .checks td, .paper .checks tbody th { padding-block: 0.8mm; }
.paper .checks td:nth-child(2) { inline-size: 42mm; }
.paper .checks td:nth-child(3) { inline-size: 24mm; }
.paper ul { list-style: none; }
.paper li { padding-inline-start: 3.5mm; text-indent: -3.5mm; }
.paper li::before { content: "\\2013\\2002"; }
.paper .boxes li { padding-inline-start: 6mm; text-indent: -6mm; padding-block: 0.4mm; }
.paper .boxes li::before { content: ""; display: inline-block; inline-size: 3mm; block-size: 3mm; margin-inline-end: 3mm; border: 0.25mm solid #1b2430; vertical-align: -0.4mm; }
.paper .boxes .done::before { background: linear-gradient(45deg, transparent 42%, #1b2430 42% 58%, transparent 58%), linear-gradient(-45deg, transparent 42%, #1b2430 42% 58%, transparent 58%); }
.paper .boxes .undone { font-weight: 700; }
.paper .two { columns: 2; column-gap: 6mm; }
.paper .two li { break-inside: avoid; }
.paper .progress td, .paper .progress tbody th { padding-block: 0.8mm; }
.paper .progress th:first-child { inline-size: 36mm; }
.paper .progress td:nth-child(2) { inline-size: 24mm; }
.paper .progress td:nth-child(3), .paper .progress td:nth-child(4) { inline-size: 26mm; }
.paper .numbered { counter-reset: line; }
.paper .numbered li { counter-increment: line; }
.paper .numbered li::after { content: " (" counter(line) ")"; color: #535b62; }
.paper .key { font-size: 7.8pt; color: #535b62; }
.paper .notes { white-space: pre-line; border-inline-start: 0.6mm solid #22439b; padding-inline-start: 2mm; }
.paper .warning { border: 0.35mm solid #1b2430; padding: 1mm 2mm; font-weight: 600; }
.paper .verdict { border: 0.35mm solid #1b2430; padding: 1.5mm 2mm; }
.paper .sign { margin-block-start: 2mm; padding-block-start: 6mm; border-block-end: 0.2mm solid #1b2430; font-size: 7.8pt; color: #535b62; }
.paper address { font-style: normal; }
.paper .to { font-size: 14pt; line-height: 1.3; margin-block: 14mm 4mm; margin-inline-start: 12mm; }
.paper .from { font-size: 8.5pt; margin-inline-start: 12mm; margin-block-end: 8mm; color: #535b62; }
.paper .qr path { fill: #000; }
.paper .qr { flex: none; margin-block: -2mm; }
.paper .blanks { display: flex; justify-content: space-around; gap: 2mm; }
.paper .blanks figure { text-align: center; flex: none; }
.paper .blanks figcaption { font-size: 8pt; }
.paper .blank-drawing { display: block; }
.paper .blank-drawing * { fill: none; stroke: #1b2430; stroke-width: 0.18; }
.paper .blank-drawing text { fill: #1b2430; stroke: #fff; stroke-width: 0.9; paint-order: stroke; font-size: 2.9px; }
.paper .blank-drawing .blank { stroke-width: 0.35; }
.paper .blank-drawing .margin { stroke-dasharray: 1.2 1; stroke: #777; }
.paper .blank-drawing .box { stroke: #999; stroke-width: 0.12; }
.paper .blank-drawing .datum { stroke: #999; stroke-width: 0.12; stroke-dasharray: 3 0.8 0.6 0.8; }
.paper .blank-drawing .outline { stroke-width: 0.5; }
.paper .blank-drawing .segment { stroke: #22439b; }
.paper .blank-drawing .hole { stroke-width: 0.25; }
.paper .blank-drawing .axis { stroke: #22439b; stroke-dasharray: 2.5 1.2; }
.paper .blank-drawing .axis-mark { stroke: #22439b; stroke-width: 0.5; }
.paper .blank-drawing .prism { stroke: #22439b; stroke-width: 0.35; }
.paper .blank-drawing .reference-middle { fill: #1b2430; stroke: none; }
.paper .blank-drawing .reference, .paper .blank-drawing .cross { stroke-width: 0.3; }
.paper .rule { display: flex; align-items: center; gap: 4mm; font-size: 7.8pt; color: #535b62; }
.paper .rule svg { flex: none; }
.paper .rule path { fill: none; stroke: #1b2430; stroke-width: 0.2; }
.paper .rule text { font-size: 2.6px; fill: #1b2430; }
@media print {
  body { margin: 0; }
  .paper { margin: 0 auto; break-after: page; break-inside: avoid; }
  .paper:last-of-type { break-after: auto; }
}
`;
