import { unitById } from '../../../grammar/units.ts';
import type { Cell } from '../../export/csv/csv-text.ts';
import { nearNames } from '../../rules/near-names.ts';
import { didYouMean } from '../arguments.ts';
import { Unusable } from '../unusable.ts';
import { type Key, keys } from './columns.ts';
import type { Listed } from './listed.ts';

/** The key of that name. @throws Unusable naming the option */
function keyNamed(name: string, option: string): Key {
  const found = keys.find(({ key }) => key === name.toLowerCase());
  if (found) return found;
  const names = keys.map(({ key }) => key);
  const near = didYouMean(nearNames(name, names)) || `; known are ${names.join(', ')}`;
  throw new Unusable(`${option}: there is no key "${name}"${near}`);
}

function compare(a: Cell, b: Cell): number {
  if (a === null || b === null) return (a === null ? 1 : 0) - (b === null ? 1 : 0);
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  return String(a).localeCompare(String(b), 'en', { numeric: true, sensitivity: 'base' });
}

/** Wells by a key; those that lack it come last either way. @throws Unusable for a key that there is not */
export function sorted(wells: readonly Listed[], by: string | null, downwards: boolean): readonly Listed[] {
  if (by === null) return wells;
  const { value } = keyNamed(by, '--sort');
  const order = (a: Cell, b: Cell): number => (downwards && a !== null && b !== null ? compare(b, a) : compare(a, b));
  return [...wells].sort((a, b) => order(value(a), value(b)));
}

const shape = /^\s*([a-z]+)\s*(!=|<=|>=|=|<|>|~)\s*(.*?)\s*$/i;
const numberShape = /^([-+]?\d+(?:\.\d+)?)\s*(\S.*)?$/;

type Test = (order: number) => boolean;

const tests: Readonly<Record<string, Test>> = {
  '=': (order) => order === 0,
  '!=': (order) => order !== 0,
  '<': (order) => order < 0,
  '<=': (order) => order <= 0,
  '>': (order) => order > 0,
  '>=': (order) => order >= 0,
};

/** A number in the key's own unit, of one that may be written in another. @throws Unusable */
function numberIn({ key, unit }: Key, written: string): number | null {
  const [, number, named] = numberShape.exec(written) ?? [];
  if (number === undefined) return null;
  if (named === undefined) return Number(number);
  const [own, other] = [unitById(unit ?? ''), unitById(named)];
  if (own === undefined) return null;
  if (other === undefined || other.dimension !== own.dimension)
    throw new Unusable(`--filter: ${key} is counted in ${own.id}; "${named}" is no unit for it`);
  return (Number(number) * other.factor) / own.factor;
}

const holdsText = (cell: Cell, written: string): boolean =>
  String(cell ?? '')
    .toLowerCase()
    .includes(written.toLowerCase());

function holdsOrder(cell: Cell, operator: string, written: string, of: Key): boolean {
  if (written === '?') return (cell === null) === (operator === '=');
  if (cell === null) return operator === '!=';
  const wanted = typeof cell === 'number' ? numberIn(of, written) : written;
  if (wanted === null) throw new Unusable(`--filter: ${of.key} is a number; "${written}" is none`);
  return tests[operator]?.(compare(cell, wanted)) ?? false;
}

/** One condition, such as `depth>60`, `yield>=5gpm`, `owner~heron`, `due=?`. @throws Unusable */
function conditionOf(written: string): (well: Listed) => boolean {
  const [, name, operator, value] = shape.exec(written) ?? [];
  if (name === undefined || operator === undefined || value === undefined)
    throw new Unusable(`--filter takes KEY and a value, such as "depth>60" or "owner~heron"; "${written}" is neither`);
  const of = keyNamed(name, '--filter');
  return operator === '~'
    ? (well) => holdsText(of.value(well), value)
    : (well) => holdsOrder(of.value(well), operator, value, of);
}

/** The wells for which every condition holds. @throws Unusable for a condition that cannot be read */
export function filtered(wells: readonly Listed[], conditions: readonly string[]): readonly Listed[] {
  const all = conditions.map(conditionOf);
  return wells.filter((well) => all.every((holds) => holds(well)));
}
