import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parseText } from '../../grammar/index.ts';
import type { Line, Quantity, Tree, Value } from '../../grammar/tree.ts';
import { toSi, unitById } from '../../grammar/units.ts';
import { valueText } from '../../grammar/write.ts';
import type { ReadOptions } from '../../server/import/index.ts';

/** A note and the lines that a careful person would write, in a file of one style. */
export interface Case {
  readonly style: string;
  readonly title: string;
  readonly options: Partial<ReadOptions>;
  readonly notes: string;
  readonly expected: string;
}

const folder = path.join(import.meta.dirname, 'notes');

function optionsOf(title: string): Partial<ReadOptions> {
  const given = [...title.matchAll(/\[([^\]]+)\]/g)].map(([, each = '']) => each);
  const columns = given.find((each) => each.startsWith('columns='))?.slice('columns='.length);
  const units = given.find((each) => each === 'm' || each === 'ft');
  return { ...(units ? { units: units as 'm' | 'ft' } : {}), ...(columns ? { columns } : {}) };
}

function caseOf(style: string, text: string): Case {
  const [title = ''] = text.split('\n', 1);
  const [notes = '', expected = ''] = text.slice(title.length + 1).split(/^--\n/m);
  return {
    style,
    title: title.replace(/ ?\[.*$/, ''),
    options: optionsOf(title),
    notes: notes.replace(/\n$/, ''),
    expected: expected.trim(),
  };
}

export const cases: readonly Case[] = readdirSync(folder)
  .sort()
  .flatMap((file) =>
    readFileSync(path.join(folder, file), 'utf8')
      .split(/^== /m)
      .slice(1)
      .map((text) => caseOf(file.replace(/\.txt$/, ''), text)),
  );

interface FileUnits {
  readonly depth: string;
  readonly diameter: string;
}

const unitsOf = ({ lines }: Tree): FileUnits => {
  const words =
    lines
      .find(({ row }) => row === 'units')
      ?.text.trim()
      .split(/\s+/) ?? [];
  return { depth: words[1] ?? 'm', diameter: words[2] ?? 'mm' };
};

const rounded = (value: number): string => String(Math.round(value * 1e6) / 1e6);

/** A quantity by what it comes to: two spellings of one value are one. */
function quantityKey(quantity: Quantity, bare: string, source: string): string {
  const unit = quantity.unit ?? unitById(bare);
  if (quantity.number === null || quantity.high !== null || unit === undefined) return valueText(quantity, source);
  const marks = [quantity.approximate && '~', quantity.plus && '+', quantity.bound, quantity.datum]
    .filter(Boolean)
    .join('');
  return `${marks}${rounded(toSi(quantity.number, unit))}${quantity.doubtful ? '?' : ''} ${unit.dimension}`;
}

const valueKey = (value: Value, bare: string, source: string): string =>
  value.kind === 'quantity' ? quantityKey(value, bare, source) : valueText(value, source);

function depthKey({ depths, text }: Line, { depth }: FileUnits): string {
  if (depths === null) return '';
  if (depths.kind === 'quantity') return quantityKey(depths, depth, text);
  const { from, to } = depths;
  const start = from === null ? '^' : quantityKey(from, from.unit?.id ?? to.unit?.id ?? depth, text);
  return `${start} - ${quantityKey(to, to.unit?.id ?? from?.unit?.id ?? depth, text)}`;
}

/** The slots of lines whose bare numbers are depths; those of all others are diameters. */
const deep = /level|set|intake|stem/;

function keyOf(line: Line, units: FileUnits): string {
  const items = line.items
    .map(({ slot, value }) => `${slot}=${valueKey(value, deep.test(slot) ? units.depth : units.diameter, line.text)}`)
    .sort();
  const section = line.row?.endsWith('.line') ? line.section : '';
  return [section, line.row, depthKey(line, units), ...items, line.remark ? `; ${line.remark.text}` : '']
    .filter((each) => each !== '')
    .join(' | ');
}

/** What the lines of a text say, comments left away. */
export function saidIn(text: string): string[] {
  const tree = parseText(text);
  const units = unitsOf(tree);
  return tree.lines.flatMap((line) => {
    const isHeading = line.keyword !== null && line.items.length === 0 && line.depths === null;
    return line.row === null || isHeading ? [] : [keyOf(line, units)];
  });
}
