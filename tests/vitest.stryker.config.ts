import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// What `npm run mutate` runs against each mutant: the tests of optics alone, the same cases every time.
export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['tests/optics/**/*.test.ts'],
    setupFiles: ['tests/stryker.seed.ts'],
    testTimeout: 60_000,
  },
});
