import type { LimitName } from '../packs/limits.ts';
import { askedText } from './asked.ts';
import type { RuleContext } from './rule.ts';

/** A limit as a message names it: `15 % more than the annulus (general)`; empty where no pack has it. */
export function limitText({ limits }: RuleContext, name: LimitName): string {
  const limit = limits[name];
  return limit ? askedText(limit) : '';
}
