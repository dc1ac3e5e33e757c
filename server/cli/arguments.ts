import { parseArgs } from 'node:util';
import { nearNames } from '../rules/near-names.ts';
import type { Arguments, Option } from './command.ts';
import { Unusable } from './unusable.ts';

/** `; did you mean "x" or "y"?`, or nothing. */
export const didYouMean = (near: readonly string[]): string =>
  near.length === 0 ? '' : `; did you mean ${near.map((each) => `"${each}"`).join(' or ')}?`;

const configOf = (options: readonly Option[]) =>
  Object.fromEntries(
    options.map(({ name, short, value }) => [
      name,
      { type: value === null ? ('boolean' as const) : ('string' as const), ...(short === null ? {} : { short }) },
    ]),
  );

function knownOption(options: readonly Option[], name: string, written: string): Option {
  const found = options.find((each) => each.name === name);
  if (found) return found;
  const near = nearNames(
    name,
    options.map((each) => each.name),
  ).map((each) => `--${each}`);
  throw new Unusable(`there is no option ${written}${didYouMean(near)}`);
}

function checkedValue(option: Option, value: string | undefined, written: string): string | null {
  if (option.value === null) {
    if (value !== undefined) throw new Unusable(`${written} takes no value, but has "${value}"`);
    return null;
  }
  if (value === undefined || value === '') throw new Unusable(`${written} needs a value: ${option.value}`);
  if (option.choices && !option.choices.includes(value)) {
    const near = didYouMean(nearNames(value, option.choices));
    throw new Unusable(`${written} takes ${option.choices.join(', ')}; "${value}" is none of them${near}`);
  }
  return value;
}

/** Reads a command's arguments. @throws Unusable for an option that is unknown or lacks its value */
export function readArguments(args: readonly string[], options: readonly Option[]): Arguments {
  const { tokens, positionals } = parseArgs({
    args: [...args],
    options: configOf(options),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const given = new Map<string, string[]>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const option = knownOption(options, token.name, token.rawName);
    const value = checkedValue(option, token.value, token.rawName);
    if (given.has(token.name) && !option.many && option.value !== null)
      throw new Unusable(`${token.rawName} is given twice`);
    given.set(token.name, [...(given.get(token.name) ?? []), ...(value === null ? [] : [value])]);
  }
  return {
    positionals,
    has: (name) => given.has(name),
    value: (name) => given.get(name)?.at(-1) ?? null,
    values: (name) => given.get(name) ?? [],
  };
}
