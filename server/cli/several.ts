import { resolve } from 'node:path';
import { type Input, standardInput } from './inputs.ts';
import { printOrWrite } from './outputs.ts';
import type { World } from './world.ts';

/** Writes what was made of several inputs together. @throws Unusable where that would be over one of them */
export async function writeTogether(
  inputs: readonly Input[],
  output: string,
  content: string,
  world: World,
): Promise<void> {
  const isOutput = ({ path }: Input): boolean => path !== null && resolve(path) === resolve(output);
  await printOrWrite(inputs.find(isOutput) ?? standardInput, output, content, world);
}
