/** `npm run bench [-- WORD …]`: runs the measurements in tests/bench one after the other, those named like WORD; what follows is theirs. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('./bench/', import.meta.url));
const word = process.argv[2] ?? '';
const names = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.ts')) : [];
const chosen = names.filter((name) => name.includes(word)).sort();

if (chosen.length === 0) {
  console.error(
    `No measurement named like "${word}" in tests/bench; there are: ${names.join(', ') || 'none'}.`,
  );
  process.exitCode = 1;
}
for (const name of chosen) {
  console.log(`── ${name}`);
  const run = spawnSync(process.execPath, [`${folder}${name}`, ...process.argv.slice(3)], {
    stdio: 'inherit',
  });
  if (run.status !== 0) process.exitCode = 1;
}
