// What CI runs: `npm test`, then the types, the style and the freshness of the generated files, in one total.
import { addTotals, closeWith, run, say, totalsIn } from './steps.mjs';

const checks = [
  ['the types agree', 'check-types', []],
  ['the style is kept', 'lint', []],
  ['the generated files are fresh', 'generate', ['--', '--check']],
];

async function check([name, script, args]) {
  say(name);
  const { code } = await run('npm', ['run', '--silent', script, ...args]);
  console.log(`${code === 0 ? 'ok' : 'not ok'} - ${name}`);
  return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

async function tests() {
  const { code, output } = await run('npm', ['test']);
  const totals = totalsIn(output) ?? { passed: 0, failed: 0 };
  return code !== 0 && totals.failed === 0 ? { ...totals, failed: 1 } : totals;
}

const totals = [await tests()];
for (const one of checks) totals.push(await check(one));
closeWith(addTotals(totals));
