// `npm start`: from an empty clone to a checked, computed and drawn well, with nothing set up by hand.
import { mkdirSync, writeFileSync } from 'node:fs';
import { ensureNode, ensurePackages, inRoot, run, say } from './steps.mjs';

const clean = 'samples/kestrel-hollow.well';
const fromTheField = 'samples/field/kestrel-hollow.well';
const outputs = '.cache/first-record';

const drillhand = (args, options) => run(process.execPath, ['dist/cli.mjs', ...args], options);

async function mustSucceed(step, args, options) {
  const { code, output, errors } = await drillhand(args, options);
  if (code === 0) return output;
  console.error(`${step} failed (exit ${code}).${options?.quiet ? `\n${errors}` : ''}`);
  process.exit(1);
}

async function check() {
  say(`Checking ${clean}`);
  await mustSucceed('The check of the clean log', ['check', clean, '--fail-on', 'error']);
  say(`Checking the same well as it came from the field, ${fromTheField}`);
  await mustSucceed('The check of the field log', ['check', fromTheField, '--fail-on', 'never']);
}

async function writeRecordAndDrawing() {
  mkdirSync(inRoot(outputs), { recursive: true });
  const writeRecord = async (format, name) =>
    writeFileSync(
      inRoot(outputs, name),
      await mustSucceed('The record', ['record', clean, '--format', format], { quiet: true }),
    );
  await writeRecord('html', 'kestrel-hollow.html');
  await writeRecord('json', 'kestrel-hollow.json');
  await mustSucceed('The drawing', ['draw', clean, '-o', `${outputs}/kestrel-hollow.svg`]);
  say('The record and the drawing');
  for (const ending of ['html', 'json', 'svg']) console.log(`  ${outputs}/kestrel-hollow.${ending}`);
}

ensureNode();
await ensurePackages();
say('Building');
await (await import('./build.mjs')).build();
await check();
await writeRecordAndDrawing();
say('Next');
console.log('  npx drillhand check FILE.well    check a log of your own');
console.log('  npm run package                  make drillhand.vsix, to install in VS Code');
