import { splitLines } from '../../grammar/index.ts';
import { analyse } from '../analysis/index.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { Pack } from '../packs/limits.ts';
import type { Severity } from '../rules/rule.ts';
import { type Beside, nothingBeside, Surroundings } from './beside.ts';
import type { Arguments } from './command.ts';
import type { Exit } from './exit.ts';
import type { ReadInput } from './inputs.ts';
import { packsFrom } from './packs.ts';
import { todayFrom } from './today.ts';
import type { World } from './world.ts';

export interface EngineSettings {
  /** Packs to check against beside those that the file names. */
  readonly packs: readonly Pack[];
  readonly today: string;
  /** What the files beside the log say; nothing where left out. */
  readonly beside?: Beside;
}

/** Everything that is known of a text. Never throws. */
export function analyseText(text: string, { packs, today, beside = nothingBeside }: EngineSettings): Snapshot {
  const { own, severities } = beside;
  return analyse(
    splitLines(text),
    {
      packs: [...packs.map(({ id }) => id), ...beside.packs],
      severities,
      today,
      own: { packs: [...packs, ...own.packs], unread: own.unread },
    },
    1,
  );
}

/** Reads logs as the command line and the files beside each log say. */
export interface Engine {
  readonly today: string;
  readonly analyse: (read: ReadInput) => Promise<Snapshot>;
  /** What the files beside a log say of the rules. */
  readonly severitiesOf: (path: string | null) => Promise<Readonly<Record<string, Severity | 'off'>>>;
  /** What the files beside the logs came to so far; to be joined to the command's own outcome. */
  readonly outcome: () => Exit;
}

/** The engine for one command line; takes `--rules` and `--today` where the command has them. @throws Unusable */
export async function engineFor(given: Arguments, world: World): Promise<Engine> {
  const surroundings = new Surroundings(world);
  const packs = await packsFrom(given.values('rules'), world);
  const today = todayFrom(given, world);
  return {
    today,
    analyse: async ({ path, text }) => analyseText(text, { packs, today, beside: await surroundings.of(path) }),
    severitiesOf: async (path) => (await surroundings.of(path)).severities,
    outcome: () => surroundings.outcome,
  };
}
