/**
 * Builds shops of 100, 1,000 and 5,000 frames and, beside each, a bare Astro site with as many pages of equal size and
 * an island of equal size each, and prints time, memory and bytes a page. Pictures for links are left out. One size, or
 * others: `npm run bench -- shops 1000`. Both are built as their owners build them: the shop by `npm run build`, which
 * asks for little memory, the bare site by Astro's own command. The bare site has no data files, feeds or second
 * language, and no letters beyond ASCII, which all cost a little. The time of the processor says most, since other
 * programs disturb it least.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { writeBareSite } from './shops/bareSite.ts';
import { writeManyFrames } from './shops/manyFrames.ts';

interface Took {
  readonly wallMs: number;
  readonly cpuMs: number;
  readonly maxRssKb: number;
}

const folder = resolve('.cache/bench');
const report = join(folder, 'report.json');

function build(name: string, cwd: string, args: readonly string[]): Took {
  const measure = resolve('tests/bench/shops/measured.mjs');
  const env = {
    ...process.env,
    ...{ BENCH_REPORT: report, BEVELBOOK_PICTURES: 'none', ASTRO_TELEMETRY_DISABLED: '1', NO_COLOR: '1' },
  };
  const options = { cwd, env, encoding: 'utf8', maxBuffer: 1 << 28 } as const;
  const run = spawnSync(process.execPath, ['--import', measure, ...args], options);
  if (run.status !== 0)
    throw new Error(`${name} was not built:\n${run.stdout.slice(-2000)}${run.stderr.slice(-4000)}`);
  return JSON.parse(readFileSync(report, 'utf8')) as Took;
}

/** Bytes of a page's island: from where it begins to the part after it. */
function islandBytes(html: string): number {
  const from = html.indexOf('id="worksheet-root"');
  return from === -1 ? 0 : Math.max(0, html.indexOf('aria-labelledby="story"', from) - from);
}

function pagesIn(site: string) {
  const names = readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.html'),
  );
  let bytes = 0;
  let island = 0;
  for (const name of names) {
    const html = readFileSync(join(site, name), 'utf8');
    bytes += Buffer.byteLength(html);
    island += islandBytes(html);
  }
  return { count: names.length, each: bytes / names.length, islandShare: island / bytes };
}

const kb = (bytes: number) => `${(bytes / 1000).toFixed(0)} kB`;
const told = ({ wallMs, cpuMs, maxRssKb }: Took, pages: number) =>
  `${(wallMs / 1000).toFixed(1)} s, processor ${(cpuMs / 1000).toFixed(1)} s (${(cpuMs / pages).toFixed(1)} ms a page), ` +
  `${(maxRssKb / 1e6).toFixed(2)} GB`;

function measureShop(frames: number): void {
  const shop = join(folder, 'shop');
  const [out, bare] = [join(folder, 'shop-site'), join(folder, 'bare')];
  writeManyFrames(shop, frames);
  rmSync(out, { recursive: true, force: true });
  const args = [resolve('src/commands/astro.ts'), 'build', '--shop', shop, '--out', out];
  const own = build('The shop', resolve('.'), args);
  const { count, each, islandShare } = pagesIn(out);
  writeBareSite(bare, count, each, islandShare);
  const other = build('The bare site', bare, [resolve('node_modules/astro/bin/astro.mjs'), 'build']);
  const bareEach = pagesIn(join(bare, 'dist')).each;
  console.log(
    `${frames} frames, ${count} pages of ${kb(each)}, ${Math.round(100 * islandShare)} % of it islands (bare ${kb(bareEach)}):`,
  );
  console.log(`  shop ${told(own, count)}`);
  console.log(`  bare ${told(other, count)}`);
  const times = (of: keyof Took) => (own[of] / other[of]).toFixed(2);
  console.log(
    `  shop / bare: processor ${times('cpuMs')}, clock ${times('wallMs')}, memory ${times('maxRssKb')} (aimed at: 1.5)`,
  );
}

const asked = process.argv.slice(2).map(Number);
for (const frames of asked.length > 0 ? asked : [100, 1000, 5000]) measureShop(frames);
rmSync(folder, { recursive: true, force: true });
