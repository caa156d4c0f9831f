/**
 * `npm run fuzz`: 10,000 order files changed by chance, each of which must be an order that the shop answers, or a
 * clean refusal. `npm run fuzz -- COUNT [FIRST-SEED]` takes another number, or other files.
 */
import { outcomeOf } from './order/fuzzing.ts';

const [count = 10_000, first = 0] = process.argv.slice(2).map(Number);
if (!Number.isSafeInteger(count) || count < 1 || !Number.isSafeInteger(first) || first < 0) {
  console.error('Expected whole numbers: npm run fuzz -- COUNT [FIRST-SEED]');
  process.exit(1);
}

const counts = new Map<string, number>();
const failures: string[] = [];
let slowestMs = 0;
for (let seed = first; seed < first + count; seed += 1) {
  const startMs = performance.now();
  try {
    for (const code of new Set(await outcomeOf(seed))) counts.set(code, (counts.get(code) ?? 0) + 1);
  } catch (error) {
    failures.push(`seed ${seed}: ${error instanceof Error ? error.stack : error}`);
  }
  slowestMs = Math.max(slowestMs, performance.now() - startMs);
}

for (const [code, times] of [...counts].sort((a, b) => b[1] - a[1]))
  console.log(`${String(times).padStart(6)} ${code}`);
for (const failure of failures.slice(0, 10)) console.error(failure);
console.log(`${count} files, ${failures.length} not clean, the slowest took ${slowestMs.toFixed(0)} ms.`);
process.exitCode = failures.length > 0 ? 1 : 0;
