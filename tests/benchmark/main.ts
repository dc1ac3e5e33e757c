/**
 * The measures that are run by hand: `npm run benchmark` for speed, `npm run benchmark -- 100 1000` for these sizes of log
 * only, `npm run benchmark -- keystrokes` for the keys that typing takes (a sample's name behind it takes that one only),
 * `npm run benchmark -- features` for what each feature costs beside a full analysis.
 */
import { featuresBeside } from './features.ts';
import { keystrokes } from './keystrokes/main.ts';
import { speed } from './speed.ts';

const [what, ...rest] = process.argv.slice(2);
if (what === 'keystrokes') await keystrokes(rest);
else if (what === 'features') await featuresBeside(rest.map(Number));
else await speed(process.argv.slice(2).map(Number));
