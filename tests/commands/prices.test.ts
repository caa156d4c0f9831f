import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeSmallShop } from '../fixtures/smallShop.ts';

let folder: string;

/** The demo shop, committed on 20 November, dearer on the 24th at 23:30 in the shop's town, and changed since. */
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'prices-'));
  writeSmallShop(join(folder, 'content'));
  git(['init', '-q'], '');
  commit('Begin', '2026-11-20T12:00:00Z');
  edit('frames/dunlin.md', 'price: "119.00"', 'price: "129.00"');
  commit('Raise Dunlin', '2026-11-25T04:30:00Z');
  edit('lenses/coatings/hard.md', /price: "[\d.]+"/, 'price: "0.00"');
  edit('shop.yaml', 'amount: "6.50"', 'amount: "7.00"');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function git(args: readonly string[], date: string): void {
  const who = ['-c', 'user.name=Owner', '-c', 'user.email=owner@shop.example', '-c', 'commit.gpgsign=false'];
  const env = { ...process.env, GIT_COMMITTER_DATE: date, GIT_AUTHOR_DATE: date };
  const run = spawnSync('git', [...who, ...args], { cwd: folder, env, encoding: 'utf8' });
  if (run.status !== 0) throw new Error(run.stderr);
}

function commit(subject: string, date: string): void {
  git(['add', 'content'], date);
  git(['commit', '-qm', subject], date);
}

function edit(file: string, passage: string | RegExp, by: string): void {
  const path = join(folder, 'content', file);
  const text = readFileSync(path, 'utf8');
  const edited = text.replace(passage, by);
  if (edited === text) throw new Error(`${file} has no ${passage}`);
  writeFileSync(path, edited);
}

function prices(...args: readonly string[]) {
  const shop = ['--shop', join(folder, 'content'), '--date', '2026-11-25'];
  const run = spawnSync(process.execPath, ['src/commands/prices.ts', ...shop, ...args], { encoding: 'utf8' });
  return { status: run.status, out: run.stdout, error: run.stderr };
}

/** The moves of listed prices: source, difference and percent. */
function moves(...args: readonly string[]) {
  const { out, error } = prices('--json', ...args);
  if (out === '') throw new Error(error);
  const report = JSON.parse(out);
  const listed = report.moves.filter(({ kind }: { kind: string }) => kind !== 'package');
  return {
    report,
    listed: listed.map((one: Record<string, unknown>) => [
      one['source'],
      one['differenceMinor'],
      one['percent'],
    ]),
  };
}

describe('npm run prices', () => {
  it('says what moves since the last commit', () => {
    const { report, listed } = moves();
    expect(report.against.subject).toBe('Raise Dunlin');
    expect(listed).toEqual([
      ['lenses/coatings/hard', -1400, -100],
      ['shop', 50, 7.7],
    ]);
  });

  it('compares with a commit that is named, the largest change first, whole pairs with tax among them', () => {
    const { report } = moves('--since', 'HEAD~1');
    expect(report.moves.map((one: Record<string, unknown>) => [one['part'], one['differenceMinor']])).toEqual(
      [
        ['price', -1400],
        // 10.00 more with 5.5 % of tax.
        ['Everyday distance pair', 1055],
        ['Strong distance pair', 1055],
        ['price', 1000],
        ['US-ME', 50],
      ],
    );
  });

  it('compares with the shop as a day of its own calendar began', () => {
    // 23:30 on the 24th in New York is the 25th in UTC.
    expect(moves('--since', '2026-11-25').report.against.subject).toBe('Raise Dunlin');
    expect(moves('--since', '2026-11-24').report.against.subject).toBe('Begin');
  });

  it('prints text with old, new, difference and percent', () => {
    const { status, out } = prices();
    expect(status).toBe(0);
    expect(out).toMatch(/\$14\.00 +\$0\.00 +-\$14\.00 +-100\.0 % {2}.*\(lenses\/coatings\/hard\)/);
    expect(out).toContain('first instant 2026-11-01T00:00:00-04:00 (2026-11-01T04:00:00Z)');
    expect(out).toContain('last instant  2026-12-05T23:59:59-05:00 (2026-12-06T04:59:59Z)');
  });

  it('prints one table for spreadsheets', () => {
    const [head, ...rows] = prices('--csv').out.trimEnd().split('\n');
    expect(head).toBe('part,source,what,old,new,difference,percent,from,to,note');
    expect(rows).toContain('shipping,shop,Tracked parcel within Maine,6.50,7.00,0.50,7.7,,,');
  });

  it('ends with status 2 where a pair sells under cost, and warns of costs that are committed', () => {
    const costs = join(folder, 'costs.yaml');
    writeFileSync(costs, 'frames:\n  dunlin: { cost: "20.00", colourways: { mudflat: "900.00" } }\n');
    const before = prices();
    expect([before.status, before.error]).toEqual([2, '']);
    expect(before.out).toMatch(/would sell under cost.*\n.*\n.*dunlin \S+ mudflat/);
    git(['add', 'costs.yaml'], '');
    expect(prices().error).toContain('costs.yaml is committed');
    writeFileSync(costs, 'frames:\n  dunlinn: "20.00"\n');
    expect(prices().error).toContain('Did you mean "dunlin"?');
    git(['rm', '-q', '-f', '--cached', 'costs.yaml'], '');
    rmSync(costs);
  });

  it.each([
    ['a commit that is not there', ['--since', 'nowhere'], 'There is no commit "nowhere"'],
    ['an option of git in place of a commit', ['--since=--all'], 'There is no commit "--all"'],
    ['a day before the first commit', ['--since', '2026-11-19'], 'no commit from before 2026-11-19'],
    ['a day that is none', ['--date', '2026-02-30'], 'expected a day as YYYY-MM-DD'],
    ['two forms at once', ['--json', '--csv'], 'found both'],
    ['an unknown option', ['--all'], 'Usage:'],
  ])('ends with status 1 for %s', (_, args, told) => {
    const { status, out, error } = prices(...args);
    expect([status, out]).toEqual([1, '']);
    expect(error).toContain(told);
    expect(error).not.toContain('    at ');
  });

  it('tells what it can without git, and how to be told more', () => {
    rmSync(join(folder, '.git'), { recursive: true });
    const { status, out } = prices();
    expect(status).toBe(0);
    expect(out).toContain('git init');
    expect(out).toContain('Promotions, by the calendar of America/New_York');
    expect(prices('--since', 'HEAD~1').status).toBe(1);
  });
});
