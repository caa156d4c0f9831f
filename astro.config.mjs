import { defineConfig } from 'astro/config';
import { shopContent } from './src/catalogue/astro.ts';
import { loadCatalogue } from './src/catalogue/load.ts';
import { apart } from './src/commands/apart.ts';
import { movedShop } from './src/commands/movedShop.ts';
import { offlineWorkroom } from './src/commands/offlineWorkroom.ts';
import { underBase } from './src/commands/underBase.ts';
import { ownerPreview } from './src/pages/_preview/devOnly.ts';

// Astro adds script-src and style-src with the digests of what each page holds.
const contentSecurityPolicy = [
  "default-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "connect-src 'self'",
  "img-src 'self' data:",
];

// Split by who shares what, the parts of these would weigh more than all of them as one.
// `kept` is looked for as a page opens, `held` once a pair is put, linked or brought along.
const kept =
  /src[\\/](?:islands[\\/]deviceShelf|configurator[\\/](?:fields|keeping|keeping[\\/]heldKeys))\.ts$/;
const held =
  /src[\\/](?:islands[\\/]carryFragment|configurator[\\/](?:basket[\\/]basket|keeping[\\/](?:heldPair|holding|link|linkKeys|parts|setAside|wouldLose)))\.ts$/;
const groups = [
  { name: 'preact', test: /node_modules[\\/](?:preact|nanostores|@nanostores)[\\/]/, priority: 2 },
  { name: 'kept', test: kept, priority: 1 },
  { name: 'held', test: held },
];

/** The shop, at the address below which it is built. */
function loadShop(folder) {
  const reading = loadCatalogue(folder);
  const base = process.env.BEVELBOOK_BASE;
  return reading.ok && base !== undefined ? movedShop(reading, base) : reading;
}

export default defineConfig({
  output: 'static',
  outDir: process.env.BEVELBOOK_OUT ?? './dist',
  // Pictures that were made once are kept here, so that the next build is quick.
  cacheDir: './.cache/astro',
  build: { format: 'directory' },
  compressHTML: true,
  devToolbar: { enabled: false },
  // Its colours are inline styles, which the policy below refuses; no page shows code.
  markdown: { syntaxHighlight: false },
  // The worksheet's engine is built in parts, which only modules can be.
  vite: {
    worker: { format: 'es' },
    plugins: [apart('src/islands/workroom'), apart('src/islands/order')],
    environments: { client: { build: { rolldownOptions: { output: { codeSplitting: { groups } } } } } },
  },
  integrations: [
    shopContent(loadShop, process.env.BEVELBOOK_SHOP),
    ownerPreview(),
    underBase(),
    offlineWorkroom(),
  ],
  security: { csp: { algorithm: 'SHA-256', directives: contentSecurityPolicy } },
});
