/** Writes a bare Astro site: so many pages of one size, so much of it an island, and nothing else. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const CONFIG = `import preact from '@astrojs/preact';
export default { output: 'static', compressHTML: true, devToolbar: { enabled: false }, integrations: [preact()] };
`;
const WORDS = 'with some words after it to fill the row up to a hundred';
const ISLAND = `import { useState } from 'preact/hooks';
export default function Island({ number, lines }) {
  const [count, setCount] = useState(number);
  const items = Array.from({ length: lines }, (_, item) => item);
  return (
    <div>
      <button type="button" onClick={() => setCount(count + 1)}>{count}</button>
      <ul>
        {items.map((item) => (
          <li key={item} class="item"><a href={\`/pages/\${number}/\`}>Line {item} of page {number}, ${WORDS}</a></li>
        ))}
      </ul>
    </div>
  );
}
`;
const page = (count: number, lines: number, islandLines: number) => `---
import Island from '../../islands/Island.jsx';
export function getStaticPaths() {
  return Array.from({ length: ${count} }, (_, number) => ({ params: { id: String(number) }, props: { number } }));
}
const { number } = Astro.props;
const items = Array.from({ length: ${lines} }, (_, item) => item);
---
<!doctype html>
<html lang="en">
  <head><meta charset="utf-8" /><title>Page {number}</title></head>
  <body>
    <h1>Page {number}</h1>
    <Island client:idle number={number} lines={${islandLines}} />
    <ul>
      {items.map((item) => <li class="item"><a href={\`/pages/\${number}/\`}>Line {item} of page {number}, ${WORDS}</a></li>)}
    </ul>
  </body>
</html>
`;

/** Bytes of one line of such a page, and of what stands round the lines. */
const LINE_BYTES = 125;
const ROUND_BYTES = 4000;

/** Fills `folder`, which must lie below one with Astro and Preact. `islandShare` of each page's bytes are the island's. */
export function writeBareSite(
  folder: string,
  pages: number,
  bytesPerPage: number,
  islandShare: number,
): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, 'src/pages/pages'), { recursive: true });
  mkdirSync(join(folder, 'src/islands'), { recursive: true });
  const lines = Math.max(2, Math.round((bytesPerPage - ROUND_BYTES) / LINE_BYTES));
  const islandLines = Math.round(lines * islandShare);
  // Astro looks here for what it has to build into the pages.
  const dependencies = { astro: '*', '@astrojs/preact': '*', preact: '*' };
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ type: 'module', dependencies }));
  writeFileSync(join(folder, 'astro.config.mjs'), CONFIG);
  writeFileSync(join(folder, 'src/islands/Island.jsx'), ISLAND);
  writeFileSync(join(folder, 'src/pages/pages/[id].astro'), page(pages, lines - islandLines, islandLines));
}
