/** `node .config/run.mjs tests/benchmark/print-features.ts`: the features alone, for the sizes that are named. */
import { printFeatures } from './features.ts';

const asked = process.argv.slice(2).map(Number);

await printFeatures(asked.length > 0 ? asked : [100, 1_000, 10_000]);
