import { expect } from 'vitest';
import type { Outcome } from '../../server/calculations/index.ts';

/** The units in which the published checks are printed, in SI (NIST SP 811). */
export const inch = 0.0254;
export const foot = 0.3048;
export const gallon = 0.003785411784;
export const pound = 0.45359237;
export const psi = 6894.757293168361;
export const cubicFoot = foot ** 3;
export const poundPerGallon = pound / gallon;
export const fluidOunce = gallon / 128;
export const ounce = pound / 16;
export const minute = 60;
export const hour = 3600;
export const day = 86_400;

export function figureOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`refused: ${outcome.why}`);
  return outcome.value;
}

/** Holds a figure against a published one within half of the published one's last digit, or within a stated tolerance. */
export function expectNear(actual: number, published: number, tolerance: number): void {
  expect(Math.abs(actual - published), `${actual} against ${published}`).toBeLessThanOrEqual(tolerance);
}
