import type { Exit } from './exit.ts';
import type { World } from './world.ts';

export interface Option {
  readonly name: string;
  readonly short: string | null;
  /** Name of its value in the help; null for a switch. */
  readonly value: string | null;
  /** The values that it takes; null for any. */
  readonly choices: readonly string[] | null;
  readonly many: boolean;
  readonly says: string;
}

/** The arguments of one command, checked against its options. */
export interface Arguments {
  readonly positionals: readonly string[];
  readonly has: (option: string) => boolean;
  /** The last value given; null where there is none. */
  readonly value: (option: string) => string | null;
  readonly values: (option: string) => readonly string[];
}

/** One command of the program. */
export interface Command {
  readonly name: string;
  readonly usage: string;
  readonly summary: string;
  readonly options: readonly Option[];
  /** Lines of the help below the options. */
  readonly notes: readonly string[];
  /** Rejects with `Unusable` for what cannot be used. */
  readonly run: (given: Arguments, world: World) => Promise<Exit>;
}

const option = (name: string, says: string, more: Partial<Omit<Option, 'name' | 'says'>> = {}): Option => ({
  name,
  says,
  short: null,
  value: null,
  choices: null,
  many: false,
  ...more,
});

export const switchOption = (name: string, says: string, short: string | null = null): Option =>
  option(name, says, { short });

export const valueOption = (name: string, value: string, says: string, more: Partial<Option> = {}): Option =>
  option(name, says, { value, ...more });

export const choiceOption = (name: string, choices: readonly string[], says: string): Option =>
  option(name, says, { value: choices.join('|'), choices });
