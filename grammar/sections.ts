import { problem, type Word } from './atoms.ts';
import { isLengthLike } from './fits.ts';
import { type Interpreted, interpret } from './interpret.ts';
import { ReadLine } from './line-notes.ts';
import { nearWords } from './near.ts';
import { readPlace } from './place.ts';
import { type RawLine, readRawLine } from './raw-line.ts';
import { isStringSection, keywords, type Row, rowById, rowByKeyword, table } from './table.ts';
import { lookup } from './terms/index.ts';
import type { Item, Keyword, Line, Problem, Text } from './tree.ts';

/** What a line must know of the lines above it. */
export interface Context {
  /** The open section; `unknown` for one that no row names; null before the first. */
  readonly section: string | null;
  /** True once a string has been opened: what hangs on a string has one to hang on. */
  readonly hasString: boolean;
}

export const startOfFile: Context = { section: null, hasString: false };

/** The section of lines under a keyword that nobody knows. */
export const unknownSection = 'unknown';

export const sameContext = (a: Context, b: Context): boolean => a.section === b.section && a.hasString === b.hasString;

/** What hangs on a section of which a file has one, so that it needs not stand inside it. */
const hangsAnywhere = new Set(['level', 'gas', 'quality', 'flowing']);

const nothing: Interpreted = { depths: null, items: [], problems: [] };

interface Reading {
  readonly row: string | null;
  readonly keyword: Keyword | null;
  readonly body: Interpreted;
  readonly problems: readonly Problem[];
  readonly next: Context;
}

const spoiled = (context: Context, problems: readonly Problem[]): Reading => ({
  row: null,
  keyword: null,
  body: nothing,
  problems,
  next: context,
});

/** The row that a first word names, as it is spelled or nearly. */
function rowNamed(word: Word): { row: Row; near: boolean; meant: string } | null {
  const text = word.text.toLowerCase().replace(/[.:]$/, '');
  const exact = rowByKeyword(text);
  if (exact) return { row: exact, near: text !== word.text.toLowerCase(), meant: text };
  if (lookup(text).length > 0) return null;
  const [meant] = nearWords(text, keywords);
  const row = meant ? rowByKeyword(meant) : undefined;
  return row && meant ? { row, near: true, meant } : null;
}

/** True where a section that opens only before a depth or nothing does open. */
function opens(row: Row, raw: RawLine): boolean {
  const next = raw.atoms[1];
  if (!row.opensBeforeDepth || !next) return true;
  if (next.kind === 'interval' || next.kind === 'unknown') return true;
  return next.kind === 'quantity' && isLengthLike(next);
}

/** Where the remark or the comment of a line begins. */
const endOfBody = ({ plain, remark, comment }: RawLine): number =>
  Math.min(remark ? plain.lastIndexOf(';', remark.start) : plain.length, comment?.start ?? plain.length);

const wordItems = (raw: RawLine, start: number, slot: string): Item[] => {
  const end = endOfBody(raw);
  return [...raw.plain.slice(start, end).matchAll(/[^\s,]+/g)].map((found) => {
    const at = { start: start + found.index, end: start + found.index + found[0].length };
    return { slot, label: null, value: { kind: 'text', text: found[0], ...at }, ...at };
  });
};

/** The text of a header; behind a keyword that was misspelt it has been taken apart, and is put together again. */
function textOf(raw: RawLine, from: number): Text | null {
  const [first, last] = [raw.atoms[from], raw.atoms.at(-1)];
  if (first === undefined || last === undefined) return null;
  if (first.kind === 'text' && first === last) return first;
  const { start, end } = { start: first.start, end: last.end };
  return { kind: 'text', text: raw.text.slice(start, end), start, end };
}

/** What follows a keyword, by the way its row is read. */
function bodyOf(row: Row, raw: RawLine, from: number): Interpreted {
  const after = raw.first?.end ?? 0;
  if (row.body === 'words') return { depths: null, items: wordItems(raw, after, row.id), problems: [] };
  if (row.body === 'place') {
    return { depths: null, ...readPlace(raw.plain, after, endOfBody(raw)) };
  }
  if (row.body === 'text') {
    const text = textOf(raw, from);
    if (text === null) return nothing;
    const { start, end } = text;
    return { depths: null, items: [{ slot: row.id, label: null, value: text, start, end }], problems: [] };
  }
  return interpret(row, row.signed ? signed(raw) : raw, from);
}

/** A minus before the first number of a `ground` line is a sign. */
function signed(raw: RawLine): RawLine {
  const atoms = raw.atoms.map((atom, at) =>
    at === 1 && atom.kind === 'interval' && atom.from === null ? { ...atom.to, minus: true, start: atom.start } : atom,
  );
  return { ...raw, atoms };
}

const keywordOf = (row: Row, word: Word, raw: RawLine, near: boolean): Keyword => ({
  id: row.id,
  written: raw.text.slice(word.start, word.end),
  near,
  start: word.start,
  end: word.end,
});

const isTelescoped = (body: Interpreted): boolean =>
  body.items.some(({ value }) => value.kind === 'term' && value.term.id === 'telescoped');

/** The section that is open after a keyword's line. */
function contextAfter(row: Row, body: Interpreted, context: Context): Context {
  if (row.where === 'section') return { section: row.id, hasString: context.hasString || isStringSection(row.id) };
  const opensString = row.id === 'screen' && (isTelescoped(body) || !context.hasString);
  return opensString ? { section: 'screen', hasString: true } : context;
}

const misplaced = (row: Row, word: Word, raw: RawLine): Problem =>
  problem('misplaced-keyword', word, raw.text.slice(word.start, word.end), [], { sections: row.of.join(', ') });

function hangs(row: Row, context: Context): boolean {
  if (row.where !== 'under' || row.id === 'screen' || hangsAnywhere.has(row.id)) return true;
  if (context.section !== null && row.of.includes(context.section)) return true;
  return row.of.some(isStringSection) && context.hasString;
}

function readKeyword(row: Row, word: Word, raw: RawLine, context: Context, near: boolean): Reading {
  if (!hangs(row, context)) return spoiled(context, [misplaced(row, word, raw)]);
  const keyword = keywordOf(row, word, raw, near);
  const stands = row.where === 'section' && row.lines !== null && row.opensBeforeDepth && raw.atoms.length > 1;
  const body = bodyOf(stands && row.lines ? rowById(row.lines) : row, raw, 1);
  return { row: row.id, keyword, body, problems: [], next: contextAfter(row, body, context) };
}

/** The open section whose first line takes an item of that label: `perf` of a casing. */
function belongsTo(label: string, { section }: Context): Problem['facts'] | null {
  const head = table.find((row) => row.where === 'section' && row.id === section);
  return head?.slots.some(({ labels }) => labels.includes(label)) ? { head: head.id } : null;
}

function readUnknown(word: Word, raw: RawLine, context: Context): Reading {
  const written = raw.text.slice(word.start, word.end);
  const alone = raw.atoms.length === 1;
  if (alone) {
    const said = problem('unknown-section', word, written, nearWords(word.text.toLowerCase(), keywords));
    const opened = { section: unknownSection, hasString: context.hasString };
    return { row: null, keyword: null, body: nothing, problems: [said], next: opened };
  }
  if (context.section === unknownSection) return spoiled(context, []);
  const section = context.section === null ? null : (table.find((row) => row.id === context.section) ?? null);
  if (section?.lines && lookup(word.text).length > 0)
    return spoiled(context, [problem('missing-depth', word, written, [], { wanted: 'interval' })]);
  const small = word.text.toLowerCase();
  const facts = belongsTo(small, context);
  return spoiled(context, [
    problem('unknown-keyword', word, written, facts ? [] : nearWords(small, keywords), facts ?? {}),
  ]);
}

function readWordLine(word: Word, raw: RawLine, context: Context): Reading {
  const named = rowNamed(word);
  if (!named) return readUnknown(word, raw, context);
  const { row, near, meant } = named;
  if (near && context.section === unknownSection && row.where !== 'section') return spoiled(context, []);
  if (row.where === 'section' && !opens(row, raw)) {
    if (near) return readUnknown(word, raw, context);
    return spoiled(context, [
      problem('misplaced-keyword', word, raw.text.slice(word.start, word.end), [], { opens: 'depth' }),
    ]);
  }
  const reading = readKeyword(row, word, raw, context, near);
  if (!near) return reading;
  return { ...reading, problems: [problem('near-keyword', word, word.text, [meant]), ...reading.problems] };
}

/** A line that begins with a value takes the meaning of its section. */
function readDepthLine(raw: RawLine, context: Context): Reading {
  const first = raw.atoms[0];
  if (!first) return spoiled(context, []);
  const at = { start: first.start, end: raw.atoms[raw.atoms.length - 1]?.end ?? first.end };
  const written = raw.text.slice(at.start, at.end);
  const bad = raw.atoms.flatMap((atom) => (atom.kind === 'bad' ? [atom.problem] : []));
  if (context.section === unknownSection) return spoiled(context, []);
  if (context.section === null) return spoiled(context, bad.length > 0 ? bad : [problem('no-section', at, written)]);
  const section = rowById(context.section);
  if (section.lines === null)
    return spoiled(
      context,
      bad.length > 0 ? bad : [problem('unexpected-depth', at, written, [], { section: section.id })],
    );
  const row = rowById(section.lines);
  return { row: row.id, keyword: null, body: interpret(row, raw, 0), problems: [], next: context };
}

const readBody = (raw: RawLine, context: Context): Reading => {
  if (raw.first) return readWordLine(raw.first, raw, context);
  return raw.atoms.length > 0 ? readDepthLine(raw, context) : spoiled(context, []);
};

const noProblems: readonly Problem[] = [];

const joined = (...lists: readonly (readonly Problem[])[]): readonly Problem[] =>
  lists.every((each) => each.length === 0) ? noProblems : lists.flat();

/** Reads a line below `context`; the context below it comes with it. Never throws for any text. */
export function readLine(text: string, context: Context): { line: Line; next: Context } {
  const raw = readRawLine(text);
  const { row, keyword, body, problems, next } = readBody(raw, context);
  const line = new ReadLine({
    text,
    row,
    section: next.section,
    keyword,
    depths: body.depths,
    items: body.items,
    remark: raw.remark,
    comment: raw.comment,
    allow: raw.allow,
    problems: joined(raw.problems, problems, body.problems),
  });
  return { line, next };
}

/** A line as it is read in an open section, where what hangs on a string has one to hang on. */
export const readInside = (section: string | null, text: string): Line =>
  readLine(text, { section, hasString: true }).line;
