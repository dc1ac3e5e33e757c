// Mutation runs, one folder of `server/` at a time: `npm run mutate -- calculations`.

/** The tests that speak of each folder; only these are run. */
const testsOf = {
  calculations: ['tests/calculations', 'tests/reference'],
  rules: ['tests/rules'],
};

const folder = process.env.DRILLHAND_MUTATE ?? 'calculations';
const tests = testsOf[folder];
if (!tests) throw new Error(`No mutation run for ${folder}; there is one for ${Object.keys(testsOf).join(' and ')}.`);
process.env.DRILLHAND_MUTATION_TESTS = tests.join(',');

export default {
  mutate: [`server/${folder}/**/*.ts`, `!server/${folder}/**/index.ts`, '!**/*.generated.ts'],
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  vitest: { configFile: '.config/vitest.mutation.config.ts', related: false },
  // A line put before every file would make the generated ones differ from what their test writes.
  disableTypeChecks: false,
  coverageAnalysis: 'perTest',
  concurrency: 1,
  // Static ones (tables, texts) take most of the time: leave them out while tests are being written.
  ignoreStatic: process.env.DRILLHAND_MUTATE_STATIC === 'no',
  ignorePatterns: ['dist', 'client', '.git', '.cache', '*.vsix', 'samples/packs'],
  tempDirName: `.cache/stryker-${folder}`,
  reporters: ['progress-append-only', 'clear-text', 'json'],
  clearTextReporter: { allowColor: false, reportTests: false },
  jsonReporter: { fileName: `.cache/mutation-${folder}.json` },
  allowEmpty: false,
};
