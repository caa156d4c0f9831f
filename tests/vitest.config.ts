import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

// Two runs: `unit` needs nothing but the source; `site` needs a built shop and a browser (see run.mjs).
export default defineConfig({
  test: {
    root,
    projects: [
      {
        test: {
          name: 'unit',
          root,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/site/**', 'tests/solids/**'],
          // Laws and commands run beside a build on two cores.
          testTimeout: 60_000,
        },
      },
      { test: { name: 'solids', root, include: ['tests/solids/**/*.test.ts'], testTimeout: 300_000 } },
      {
        test: {
          name: 'site',
          root,
          include: ['tests/site/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
