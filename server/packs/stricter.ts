import type { LimitName } from './limits.ts';

/** Limits whose greater value asks for more; of all others the smaller value does. */
const greaterAsksMore: ReadonlySet<LimitName> = new Set<LimitName>([
  'grout-allowance',
  'solids-least',
  'oversize-least',
  'set-time-cement',
  'stickup-least',
  'casing-depth-least',
  'casing-size-least',
  'wall-least',
  'rock-seat-least',
  'seal-depth-least',
  'well-depth-least',
  'well-depth-never-under',
  'chlorine-least',
  'chlorine-contact-least',
  'test-time-least',
  'uphole-velocity-least',
  'air-rating-loss',
  'pack-above-screen-least',
  'centralizer-set-least',
  'montmorillonite-least',
  'pack-kept-back-least',
  'pack-grain-ratio-least',
]);

/** True where `value` is a stricter limit of that name than `other`; both in the limit's SI unit. */
export const stricter = (name: LimitName, value: number, other: number): boolean =>
  greaterAsksMore.has(name) ? value > other : value < other;
