/** What the program ends with. */
export const exit = {
  clean: 0,
  /** Findings at or above the level asked for; files that are not formatted. */
  found: 1,
  /** Input or arguments that cannot be used. */
  unusable: 2,
} as const;

export type Exit = (typeof exit)[keyof typeof exit];

/** The graver of two outcomes. */
export const graver = (a: Exit, b: Exit): Exit => (a > b ? a : b);
