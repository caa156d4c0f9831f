/**
 * `npm test`: every check of the project, two at a time. All of them run even when one fails, each prints one
 * line (and its output where that helps), and the last line counts the tests of both vitest runs.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { whenAskedToStop } from '../src/commands/stop.ts';

interface Stage {
  readonly name: string;
  /** A script and its arguments: no shell, the same on every system. */
  readonly command: readonly string[];
  /** The stage that this one waits for; where `needs` failed it cannot run, where `after` failed it still does. */
  readonly needs?: string;
  readonly after?: string;
  readonly report?: string;
}

const root = fileURLToPath(new URL('..', import.meta.url));
const reports = `${root}.cache/reports`;

function vitest(project: string): Pick<Stage, 'command' | 'report'> {
  const report = `${reports}/${project}.json`;
  const options = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  return {
    command: [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--config',
      'tests/vitest.config.ts',
      '--project',
      project,
      ...options,
    ],
    report,
  };
}

const stages: readonly Stage[] = [
  { name: 'build', command: ['src/commands/astro.ts', 'build'] },
  { name: 'lint', command: ['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings'] },
  { name: 'dead code', command: ['node_modules/knip/bin/knip.js', '--treat-config-hints-as-errors'] },
  { name: 'browser', needs: 'build', ...vitest('site') },
  { name: 'unit', ...vitest('unit') },
  // After all builds, those of the browser tests too, since they write Astro's generated types as well.
  {
    name: 'types',
    after: 'browser',
    command: ['src/commands/astro.ts', 'check', '--minimumFailingSeverity', 'hint'],
  },
];

// Colours for a person at a terminal, none in a log.
const { FORCE_COLOR: _forced, NO_COLOR: _plain, ...inherited } = process.env;
const env = { ...inherited, ...(process.stdout.isTTY ? { FORCE_COLOR: '1' } : { NO_COLOR: '1' }) };

const running = new Set<ChildProcess>();
const passed = new Map<string, boolean>();

function execute(stage: Stage): Promise<{ ok: boolean; output: string }> {
  const child = spawn(process.execPath, stage.command, { cwd: root, env, stdio: ['ignore', 'pipe', 'pipe'] });
  running.add(child);
  let output = '';
  child.stdout.on('data', (chunk: Buffer) => (output += chunk));
  child.stderr.on('data', (chunk: Buffer) => (output += chunk));
  return new Promise((settle) => {
    const end = (ok: boolean) => {
      running.delete(child);
      settle({ ok, output });
    };
    child.on('error', (error) => {
      output += `${error.message}\n`;
      end(false);
    });
    child.on('close', (status) => end(status === 0));
  });
}

async function runStage(stage: Stage): Promise<void> {
  if (stage.needs !== undefined && passed.get(stage.needs) !== true) {
    console.log(`── ${stage.name}: not run, because ${stage.needs} failed`);
    passed.set(stage.name, false);
    return;
  }
  const startMs = performance.now();
  const { ok, output } = await execute(stage);
  const seconds = ((performance.now() - startMs) / 1000).toFixed(1);
  if (!ok || stage.report !== undefined) console.log(output.trimEnd());
  console.log(`── ${stage.name}: ${ok ? 'passed' : 'FAILED'} in ${seconds} s`);
  passed.set(stage.name, ok);
}

/** Starts what is ready, in the order of the list, never more than two at a time. */
async function runAll(): Promise<void> {
  const waiting = [...stages];
  const busy = new Set<Promise<void>>();
  while (waiting.length > 0 || busy.size > 0) {
    const next = waiting.findIndex(({ needs, after }) => [needs, after].every((on) => !on || passed.has(on)));
    const stage = busy.size < 2 && next >= 0 ? waiting.splice(next, 1)[0] : undefined;
    if (stage === undefined) {
      await Promise.race(busy);
      continue;
    }
    const run: Promise<void> = runStage(stage).finally(() => busy.delete(run));
    busy.add(run);
  }
}

interface Counts {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

/** What one vitest run counted; a run that left no report, or a file that could not start, counts as one failure. */
function readCounts(report: string): Counts {
  try {
    const found = JSON.parse(readFileSync(report, 'utf8'));
    const unstarted = found.testResults.filter(
      (file: { status: string; assertionResults: unknown[] }) =>
        file.status === 'failed' && file.assertionResults.length === 0,
    ).length;
    return {
      passed: found.numPassedTests,
      failed: found.numFailedTests + unstarted,
      skipped: found.numPendingTests + found.numTodoTests,
    };
  } catch {
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

whenAskedToStop(() => {
  for (const child of running) child.kill();
  process.exit(1);
});

rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });
console.log(`Checking Bevelbook: ${stages.map(({ name }) => name).join(', ')}.`);
await runAll();

const counts = stages.flatMap(({ report }) => (report === undefined ? [] : [readCounts(report)]));
const sum = (key: keyof Counts) => counts.reduce((total, each) => total + each[key], 0);
const failedStages = stages.filter(({ name }) => passed.get(name) !== true).map(({ name }) => name);
console.log(failedStages.length === 0 ? 'Every stage passed.' : `Failed: ${failedStages.join(', ')}.`);
console.log(
  `${sum('passed')} passed, ${sum('failed')} failed${sum('skipped') ? `, ${sum('skipped')} skipped` : ''}`,
);
process.exitCode = failedStages.length === 0 ? 0 : 1;
