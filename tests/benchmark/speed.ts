import { buildServers } from './bundles.ts';
import { timed } from './clock.ts';
import type { Contender } from './contenders/contender.ts';
import { drillhand } from './contenders/drillhand.ts';
import { json } from './contenders/json.ts';
import { scanner } from './contenders/scanner.ts';
import { yaml } from './contenders/yaml.ts';
import { type Times, timesOf } from './in-process.ts';
import { logOf } from './logs.ts';
import { againstAim, number, row, rule } from './print.ts';
import { type Served, servedBy } from './stdio.ts';

const allSizes = [100, 1_000, 10_000, 50_000];

const roundsFor = (size: number): number => (size <= 1_000 ? 15 : size <= 10_000 ? 7 : 3);

/** The YAML service is left out where a check would take longer, in milliseconds. */
const longestCheck = 60_000;

/** Steady state is what an editor's session is measured in: code that has not run often runs several times slower. */
async function warmUp(contenders: readonly Contender[]): Promise<void> {
  for (const size of [100, 1_000]) await timesOf(contenders, logOf(size), size, 40);
}

let yamlPerLine = 0;

/** The YAML service's times, or null where a check is expected to take too long. */
async function yamlTimes(size: number): Promise<Times | null> {
  if (yamlPerLine * size > longestCheck) return null;
  const log = logOf(size);
  const { ms } = await timed(() => yaml.open(log.yaml));
  yamlPerLine = (ms / size) * 2;
  return (await timesOf([yaml], log, size, size > 1_000 ? 1 : 3)).get(yaml) ?? null;
}

async function inProcess(size: number): Promise<void> {
  const taken = await timesOf([drillhand, json, scanner], logOf(size), size, roundsFor(size));
  const [ours, theirs, bare] = [taken.get(drillhand), taken.get(json), taken.get(scanner)];
  if (!ours || !theirs || !bare) return;
  const slow = await yamlTimes(size);
  const line = (what: string, of: 'full' | 'edit', aim: number | null): void =>
    row(
      `${size} ${what}`,
      number(ours[of]),
      number(theirs[of]),
      againstAim(ours[of] / theirs[of], aim),
      slow ? number(slow[of]) : 'over 1 min',
      number(bare[of]),
    );
  line('full analysis, ms', 'full', 0.5);
  line('one letter, ms', 'edit', size === 10_000 ? 1 / 20 : null);
  row(`${size} findings`, String(ours.findings), String(theirs.findings), '', slow ? String(slow.findings) : '', '');
}

const rows: readonly (readonly [string, keyof Served, number | null])[] = [
  ['spawn to first, ms', 'first', 0.7],
  ['open to diagnostics, ms', 'open', null],
  ['one letter, ms', 'edit', null],
  ['memory, MB', 'memory', 1],
];

type Servers = Awaited<ReturnType<typeof buildServers>>;

async function overStdio(size: number, { ours, json: other, lines }: Servers): Promise<void> {
  const taken = await servedBy([ours, other, lines], logOf(size), size, roundsFor(size));
  const [mine, theirs, least] = [taken.get(ours), taken.get(other), taken.get(lines)];
  if (!mine || !theirs || !least) return;
  for (const [what, of, aim] of rows)
    row(
      `${size} ${what}`,
      number(mine[of]),
      number(theirs[of]),
      againstAim(mine[of] / theirs[of], aim),
      number(least[of]),
      '',
    );
}

/**
 * What a full analysis and one edited letter cost, in process and over the protocol, beside general services that check
 * the same record as JSON and as YAML with a schema, a bare line scanner, and a server that only keeps lines. Medians of
 * turns taken one after another; on a busy machine only the ratios mean anything.
 */
export async function speed(asked: readonly number[]): Promise<void> {
  const sizes = asked.length > 0 ? asked : allSizes;
  const servers = await buildServers();
  await warmUp([drillhand, json, scanner]);
  await timesOf([yaml], logOf(300), 300, 10);
  console.log('\nIn process: a log of so many strata lines, from text to findings\n');
  row('lines', 'drillhand', 'JSON', 'ratio', 'YAML', 'line scanner');
  rule();
  for (const size of sizes) await inProcess(size);
  console.log('\nOver the standard streams\n');
  row('lines', 'drillhand', 'JSON server', 'ratio', 'lines only', '');
  rule();
  for (const size of sizes) await overStdio(size, servers);
}
