import { nodeWorld } from './node-world.ts';
import { runProgram } from './program.ts';

const two = (number: number): string => String(number).padStart(2, '0');

/** Today on the wall calendar of this machine. */
const todayHere = (now: Date): string => `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;

/** A reader that has seen enough (`drillhand rules | head`) is no fault; an output that cannot be written is. */
function whenOutputFails(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') process.stderr.write(`drillhand: the output could not be written: ${error.message}\n`);
  process.exit(error.code === 'EPIPE' ? 0 : 2);
}

process.stdout.on('error', whenOutputFails);
process.stderr.on('error', () => process.exit(2));

process.exitCode = await runProgram(
  process.argv.slice(2),
  nodeWorld(process.env.DRILLHAND_TODAY ?? todayHere(new Date())),
);
