/**
 * `npm run lighthouse`: home, the list and a frame's page of the built shop as Lighthouse judges them on its slow
 * phone, the median of three runs. Exit status 1 where a score is below what README promises. `-- --runs 1` is quick.
 */
import { createServer } from 'node:net';
import { parseArgs } from 'node:util';
import lighthouse from 'lighthouse';
import { loadCatalogue } from '../src/catalogue/load.ts';
import { openBrowser } from './site/browser.ts';
import { serveShop } from './site/server.ts';

/** Least scores, of 100. */
const LEAST = { performance: 95, accessibility: 100, 'best-practices': 100, seo: 100 } as const;
type Category = keyof typeof LEAST;
const CATEGORIES = Object.keys(LEAST) as Category[];

const { values } = parseArgs({ options: { runs: { type: 'string', default: '3' } } });
const runs = Number(values.runs);
if (!Number.isInteger(runs) || runs < 1 || runs > 9) {
  console.error(`--runs takes a whole number from 1 to 9; found: ${values.runs}`);
  process.exit(1);
}

function freePort(): Promise<number> {
  return new Promise((settle, fail) => {
    const probe = createServer().on('error', fail);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => settle(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}

interface Run {
  readonly scores: Readonly<Record<Category, number>>;
  /** Audits below their full score, by category. */
  readonly wanting: readonly string[];
}

async function judge(url: string, port: number): Promise<Run> {
  const result = await lighthouse(url, {
    port,
    output: 'json',
    logLevel: 'silent',
    onlyCategories: CATEGORIES,
  });
  if (result === undefined) throw new Error(`Lighthouse gave no result for ${url}.`);
  const { categories, audits } = result.lhr;
  const scores = Object.fromEntries(
    CATEGORIES.map((name) => [name, Math.round(100 * (categories[name]?.score ?? 0))]),
  ) as Record<Category, number>;
  const wanting = CATEGORIES.flatMap((name) =>
    (categories[name]?.auditRefs ?? []).flatMap(({ id, weight }) => {
      const audit = audits[id];
      const full = audit?.score === null || audit?.score === undefined || audit.score >= 0.9;
      return weight === 0 || full ? [] : [`${name}: ${audit.title} ${audit.displayValue ?? ''}`.trimEnd()];
    }),
  );
  return { scores, wanting };
}

function median(numbers: readonly number[]): number {
  return numbers.toSorted((a, b) => a - b)[Math.floor((numbers.length - 1) / 2)] ?? 0;
}

const reading = loadCatalogue('content');
const frame = reading.ok ? reading.catalogue.frames[0]?.id : undefined;
if (frame === undefined) {
  console.error('The content has faults: npm run check tells them.');
  process.exit(1);
}

const port = await freePort();
const [server, browser] = await Promise.all([serveShop(), openBrowser([`--remote-debugging-port=${port}`])]);
let failed = false;
try {
  console.log(['page'.padEnd(28), ...CATEGORIES].join('  '));
  for (const path of ['/', '/frames/', `/frames/${frame}/`]) {
    const all: Run[] = [];
    for (let run = 0; run < runs; run += 1) all.push(await judge(`${server.origin}${path}`, port));
    const scores = CATEGORIES.map((name) => ({ name, score: median(all.map((run) => run.scores[name])) }));
    console.log(
      [path.padEnd(28), ...scores.map(({ name, score }) => String(score).padStart(name.length))].join('  '),
    );
    for (const text of new Set(all.flatMap(({ wanting }) => wanting))) console.log(`  ${text}`);
    for (const { name, score } of scores) {
      if (score >= LEAST[name]) continue;
      failed = true;
      console.log(`  ${name}: ${score}, expected at least ${LEAST[name]}`);
    }
  }
} finally {
  await Promise.all([browser.close(), server.close()]);
}
process.exitCode = failed ? 1 : 0;
