// npm run mutate -- FOLDER [FILES]: changes server/FOLDER, or the files named (a glob), piece by piece and sees
// whether a test notices. By hand: it takes long. The report is also left in .cache/mutation-FOLDER.json.
import { inRoot, isMain, run } from './steps.mjs';

if (isMain(import.meta.url)) {
  const [folder = 'calculations', files] = process.argv.slice(2);
  const only = files === undefined ? [] : ['--mutate', files];
  const stryker = inRoot('node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js');
  const { code } = await run(process.execPath, [stryker, 'run', '.config/stryker.config.mjs', ...only], {
    env: { DRILLHAND_MUTATE: folder },
  });
  process.exitCode = code;
}
