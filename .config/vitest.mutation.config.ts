import { defineConfig } from 'vitest/config';

/** Runs the tests named by the mutation run (`.config/stryker.config.mjs`), and no others. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: (process.env.DRILLHAND_MUTATION_TESTS ?? '').split(',').map((folder) => `${folder}/**/*.test.ts`),
    testTimeout: 30_000,
  },
});
