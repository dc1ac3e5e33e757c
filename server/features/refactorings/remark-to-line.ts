import * as l10n from '@vscode/l10n';
import { readInside } from '../../../grammar/sections.ts';
import type { Line } from '../../../grammar/tree.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import { areSame, depthsOn } from '../depths.ts';
import { type Section, sectionsOf } from '../sections.ts';
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

const bodyOf = ({ line, section }: Told): Line => readInside(section, `  ${line}`);

const isRead = (told: Told): boolean => {
  const { row, section, problems } = bodyOf(told);
  return row !== null && section === told.section && problems.length === 0;
};

/** A part of a remark that is a line of its own, and what is left of the remark without it. */
interface Found extends Told {
  readonly left: string;
}

function toldBy(text: string, { section: open }: Line): Told | null {
  for (const { pattern, section, line: write } of patterns) {
    const found = pattern.exec(text);
    if (found === null) continue;
    const told = { section, line: write(found[1] ?? '', found[2] ?? '') };
    return open === section && told.line.startsWith('level') ? null : isRead(told) ? told : null;
  }
  return null;
}

/** The first part of the remark, among those that a semicolon parts, that is a line. */
function foundIn(line: Line): Found | null {
  const parts = line.remark?.text.split(';').map((part) => part.trim()) ?? [];
  for (const [at, part] of parts.entries()) {
    const told = toldBy(part, line);
    if (told !== null) return { ...told, left: parts.filter((_, other) => other !== at).join('; ') };
  }
  return null;
}

/** The line with what is left of its remark; its comment stays in its column. */
function withRemark({ text, remark }: Line, left: string): string {
  if (remark === null) return text;
  const before = text.slice(0, remark.start).replace(/\s*;?\s*$/, '');
  const after = text.slice(remark.end).trim();
  const said = left === '' ? before : `${text.slice(0, remark.start)}${left}`;
  if (after === '') return said;
  return `${said.padEnd(text.length - after.length - 2)}  ${after}`;
}

const metresOf = (line: Line, { log }: Snapshot): number | null => depthsOn(line, log.units)[0]?.metres ?? null;

/** True where the section has a line of that kind at that depth already. */
function isThere(told: Told, snapshot: Snapshot): boolean {
  const body = bodyOf(told);
  const metres = metresOf(body, snapshot);
  return snapshot.tree.lines.some((line) => {
    const other = line.row === body.row ? metresOf(line, snapshot) : null;
    return metres !== null && other !== null && areSame(metres, other);
  });
}

/** The number of the line that it comes to stand above: the first of its kind that is deeper, else the end of the section. */
function placeIn({ first, last }: Section, told: Told, snapshot: Snapshot): number {
  const body = bodyOf(told);
  const metres = metresOf(body, snapshot) ?? Number.POSITIVE_INFINITY;
  const lines = snapshot.tree.lines.slice(first + 1, last + 1);
  const deeper = lines.findIndex(
    (line) => body.row === 'water.line' && line.row === body.row && (metresOf(line, snapshot) ?? 0) > metres,
  );
  return deeper < 0 ? last + 1 : first + 1 + deeper;
}

const indentIn = ({ first, last }: Section, { lines }: Snapshot): string =>
  first === last ? '  ' : (/^\s*/.exec(lines[last] ?? '')?.[0] ?? '');

/** Among the lines of the section, or with a keyword of its own behind the last line of the file. */
function added(snapshot: Snapshot, told: Told): Change {
  const { tree, lines } = snapshot;
  const there = sectionsOf(tree).findLast(({ id }) => id === told.section);
  if (there !== undefined)
    return lineInserted(lines, placeIn(there, told, snapshot), `${indentIn(there, snapshot)}${told.line}`);
  const end = lines.findLastIndex((each) => each.trim() !== '') + 1;
  return lineInserted(lines, end, `\n${told.section}\n  ${told.line}`);
}

const foundAt = (snapshot: Snapshot, number: number): Found | null => {
  const line = snapshot.tree.lines[number];
  const found = line === undefined ? null : foundIn(line);
  return found === null || isThere(found, snapshot) ? null : found;
};

/** A remark that says what has a line of its own in another section becomes that line; the rest of it stays. */
export const remarkToLine: Refactoring = {
  id: 'remark-to-line',
  kind: 'refactor.extract',
  offers: (snapshot, { first }) => {
    const found = foundAt(snapshot, first.line);
    if (found === null) return [];
    const line = found.line.replace(/\s+/g, ' ');
    return [{ name: 'line', title: l10n.t('Make the remark a line of {0}: {1}', found.section, line) }];
  },
  changes: (snapshot, { first }) => {
    const line = snapshot.tree.lines[first.line];
    const found = foundAt(snapshot, first.line);
    if (line === undefined || found === null) return [];
    return [changeOf(first.line, line.text, withRemark(line, found.left)), added(snapshot, found)];
  },
  refusal: null,
};
