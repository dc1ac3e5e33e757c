import { readLine } from '../../../grammar/sections.ts';
import type { Line } from '../../../grammar/tree.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import { sectionsOf } from '../sections.ts';
import { type Change, changeOf, lineInserted } from './change.ts';
import type { Refactoring } from './refactoring.ts';

/** A line that a remark says in full, and the section that it belongs to. */
interface Told {
  readonly section: string;
  readonly line: string;
}

interface Pattern {
  readonly pattern: RegExp;
  readonly section: string;
  /** What the line says of the depths and whatever else the remark holds. */
  readonly line: (depths: string, more: string) => string;
}

const depth = String.raw`\d+(?:\.\d+)?(?:\s*(?:m|ft))?`;
const depths = String.raw`(?:at\s+|@\s*|from\s+)?(${depth}(?:\s*(?:-|to)\s*${depth})?)`;
const rate = String.raw`\d+(?:\.\d+)?\s*(?:L\/min|gpm|L\/s|lpm)`;

/** Remarks that leave nothing to guess: the whole of one must read as one of these. */
const patterns: readonly Pattern[] = [
  {
    pattern: new RegExp(String.raw`^water(?:\s+found)?\s+${depths}(?:\s*,?\s+(${rate}))?$`, 'i'),
    section: 'water',
    line: (at, more) => `${at}  ${more === '' ? '?' : more}`,
  },
  {
    pattern: new RegExp(String.raw`^(?:static|static level|swl|water level)\s+${depths}$`, 'i'),
    section: 'water',
    line: (at) => `level  ${at}`,
  },
  {
    pattern: new RegExp(String.raw`^gas\s+${depths}$`, 'i'),
    section: 'water',
    line: (at) => `gas  ${at}`,
  },
  {
    pattern: new RegExp(String.raw`^(?:returns lost|lost returns|lost circulation|circulation lost)\s+${depths}$`, 'i'),
    section: 'drilling',
    line: (at) => `lost  ${at}`,
  },
];

const isRead = ({ section, line }: Told): boolean => {
  const read = readLine(`  ${line}`, { section, hasString: true }).line;
  return read.row !== null && read.section === section && read.problems.length === 0;
};

function toldBy(line: Line): Told | null {
  const text = line.remark?.text.trim() ?? '';
  for (const { pattern, section, line: write } of patterns) {
    const found = pattern.exec(text);
    if (found === null) continue;
    const told = { section, line: write(found[1] ?? '', found[2] ?? '') };
    return line.section === section && told.line.startsWith('level') ? null : isRead(told) ? told : null;
  }
  return null;
}

/** The line without its remark; its comment stays. */
function withoutRemark({ text, remark }: Line): string {
  if (remark === null) return text;
  const before = text.slice(0, remark.start).replace(/\s*;?\s*$/, '');
  const after = text.slice(remark.end).trim();
  return after === '' ? before : `${before}  ${after}`;
}

/** Behind the last line of the section, or with a keyword of its own behind the last line of the file. */
function added({ tree, lines }: Snapshot, { section, line }: Told): Change {
  const there = sectionsOf(tree).findLast(({ id }) => id === section);
  if (there !== undefined) return lineInserted(lines, there.last + 1, `  ${line}`);
  const end = lines.findLastIndex((each) => each.trim() !== '') + 1;
  return lineInserted(lines, end, `\n${section}\n  ${line}`);
}

const titleOf = ({ section, line }: Told): string =>
  `Make the remark a line of ${section}: ${line.replace(/\s+/g, ' ')}`;

/** A remark that says what has a line of its own in another section becomes that line. */
export const remarkToLine: Refactoring = {
  id: 'remark-to-line',
  kind: 'refactor.extract',
  offers: ({ tree }, { first }) => {
    const line = tree.lines[first.line];
    const told = line === undefined ? null : toldBy(line);
    return told === null ? [] : [{ name: 'line', title: titleOf(told) }];
  },
  changes: (snapshot, { first }) => {
    const line = snapshot.tree.lines[first.line];
    const told = line === undefined ? null : toldBy(line);
    if (line === undefined || told === null) return [];
    return [changeOf(first.line, line.text, withoutRemark(line)), added(snapshot, told)];
  },
  refusal: null,
};
