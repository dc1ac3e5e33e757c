import type { Snapshot } from '../analysis/snapshot.ts';
import { checkFolder, type FolderFindings } from '../folder/check-folder.ts';
import type { FolderWell } from '../rules/folder/well.ts';
import type { Engine } from './engine.ts';
import { type Exit, exit, graver } from './exit.ts';
import { type Input, readLog, tolerating } from './inputs.ts';
import type { World } from './world.ts';

/** Reads logs one after the other and keeps something of each; what is wrong with those that cannot be read is told. */
export async function readEach<T>(
  inputs: readonly Input[],
  engine: Engine,
  world: World,
  keep: (input: Input, snapshot: Snapshot) => T,
): Promise<{ readonly kept: readonly T[]; readonly outcome: Exit }> {
  const kept: T[] = [];
  let outcome: Exit = exit.clean;
  for (const input of inputs) {
    const read = await tolerating(world, async () => {
      kept.push(keep(input, await engine.analyse(await readLog(input, world))));
      return exit.clean;
    });
    outcome = graver(outcome, read);
  }
  return { kept, outcome };
}

/** A log that was read, as the rules of a folder see it. */
export interface ReadWell {
  readonly path: string | null;
  readonly well: FolderWell;
}

/** What the rules of a folder say of logs that are given together. */
export async function findingsTogether(wells: readonly ReadWell[], engine: Engine): Promise<FolderFindings> {
  const said = new Map<string, Awaited<ReturnType<Engine['severitiesOf']>>>();
  for (const { path, well } of wells) said.set(well.file, await engine.severitiesOf(path));
  return checkFolder(
    wells.map(({ well }) => well),
    (file) => said.get(file) ?? {},
  );
}
