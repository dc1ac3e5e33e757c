import { expect } from 'vitest';
import type { Outcome } from '../../server/calculations/index.ts';

export function figureOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`refused: ${outcome.why}`);
  return outcome.value;
}

/** Each outcome must be a refusal with a reason. */
export function expectRefused(why: RegExp, ...outcomes: Outcome<unknown>[]): void {
  for (const outcome of outcomes) expect(outcome.ok ? outcome.value : outcome.why).toEqual(expect.stringMatching(why));
}
