/** Loaded before a program: writes what it took into the file that BENCH_REPORT names, as it ends. */
import { writeFileSync } from 'node:fs';

process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  const report = { wallMs: performance.now(), cpuMs: (userCPUTime + systemCPUTime) / 1000, maxRssKb: maxRSS };
  writeFileSync(process.env.BENCH_REPORT, JSON.stringify(report));
});
