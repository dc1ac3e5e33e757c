// `npm test`: everything, from an empty clone. `unit` or `editor` runs one half.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { addTotals, closeWith, ensureNode, ensurePackages, inRoot, run, say, totalsIn } from './steps.mjs';

const oneFailed = (what) => {
  console.error(`not ok - ${what}`);
  return { passed: 0, failed: 1 };
};

async function buildIsSound() {
  say('Building');
  try {
    await (await import('./build.mjs')).build();
    return true;
  } catch {
    return false;
  }
}

/** Totals of a vitest run; a file that could not even be loaded counts as one failed test. */
function totalsOfReport(file) {
  if (!existsSync(file)) return null;
  const report = JSON.parse(readFileSync(file, 'utf8'));
  const unloaded = report.testResults.filter(
    (suite) => suite.status === 'failed' && suite.assertionResults.length === 0,
  );
  return { passed: report.numPassedTests, failed: report.numFailedTests + report.numPendingTests + unloaded.length };
}

async function unitTests() {
  say('Tests of the parts');
  mkdirSync(inRoot('.cache'), { recursive: true });
  const report = inRoot('.cache', 'vitest.json');
  rmSync(report, { force: true });
  const vitest = inRoot('node_modules', 'vitest', 'vitest.mjs');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const { code } = await run(process.execPath, [vitest, 'run', '--config', '.config/vitest.config.ts', ...reporters]);
  const totals = totalsOfReport(report);
  if (totals === null) return oneFailed('vitest wrote no report');
  return code !== 0 && totals.failed === 0 ? addTotals([totals, oneFailed(`vitest ended with ${code}`)]) : totals;
}

async function editorTests() {
  say('Tests in the real editor');
  const { file } = await (await import('./package.mjs')).packExtension();
  const { code, output } = await (await import('./run.mjs')).runTypeScript('tests/editor/main.ts', [file]);
  const totals = totalsIn(output);
  if (totals === null) return oneFailed(`the editor tests ended with ${code} and no totals`);
  return code !== 0 && totals.failed === 0
    ? addTotals([totals, oneFailed(`the editor tests ended with ${code}`)])
    : totals;
}

const parts = { unit: [unitTests], editor: [editorTests] };
const chosen = parts[process.argv[2]] ?? [unitTests, editorTests];

ensureNode();
await ensurePackages();
const totals = [];
if (await buildIsSound())
  for (const part of chosen) totals.push(await part().catch((error) => oneFailed(error.message)));
else totals.push(oneFailed('the build'));
closeWith(addTotals(totals));
