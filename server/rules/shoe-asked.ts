import type { PipeString } from '../model/log.ts';
import { limitGiven } from '../packs/index.ts';
import type { LimitInForce } from '../packs/limits.ts';
import { bottomOf } from './columns.ts';
import { factsOfString, wellCasing } from './facts.ts';
import type { RuleContext } from './rule.ts';

/** The pack's limit by which the string that cases the well must have a shoe; null for every other string. */
export function shoeAsked(string: PipeString, { log, limits }: RuleContext): LimitInForce | null {
  const foot = bottomOf(string);
  if (foot === null || wellCasing(log)?.number !== string.number) return null;
  const beyond = limitGiven(limits, 'shoe-beyond', factsOfString(string, log));
  return beyond && foot > beyond.value + 1e-3 ? beyond : null;
}
