import { type Atom, problem, type Word } from './atoms.ts';
import { plainCharacters } from './characters.ts';
import { parseAtoms } from './line-parser.ts';
import { rowByKeyword } from './table.ts';
import { Comment, lexLine, Quoted, Remark } from './tokens.ts';
import type { Allow, Problem, Text } from './tree.ts';

/** A line's text taken apart, before the table has said what it means. */
export interface RawLine {
  readonly text: string;
  /** The text with plain characters, of the same length. */
  readonly plain: string;
  readonly atoms: readonly Atom[];
  /** The first atom, where it is a word: perhaps a keyword. */
  readonly first: Word | null;
  readonly remark: Text | null;
  readonly comment: Text | null;
  readonly allow: Allow | null;
  readonly problems: readonly Problem[];
}

/** No line of a log is longer; what is longer is no log, and is not read. */
export const longestLine = 10_000;

const firstWord = /^[\s\ufeff]*([A-Za-z][A-Za-z-]*)(?![\p{L}\d-])/u;

/** The bodies that are kept as text, so that `;` and `#` in them mean nothing. */
const isText = (plain: string): boolean => {
  const word = firstWord.exec(plain)?.[1];
  return word !== undefined && rowByKeyword(word)?.body === 'text';
};

const allowPattern = /^#\s*allow\s+([a-z0-9-]+(?:\s*,\s*[a-z0-9-]+)*)\s*(:?)\s*(.*)$/i;

const trimmed = (text: string, from: number, to: number): Text => {
  let start = from;
  let end = to;
  while (start < end && /\s/.test(text.charAt(start))) start++;
  while (end > start && /\s/.test(text.charAt(end - 1))) end--;
  return { kind: 'text', text: text.slice(start, end), start, end };
};

/** `# allow RULE, RULE: reason`, or null where a comment is just a comment. */
function allowOf(text: string, start: number): Allow | null {
  const found = allowPattern.exec(text.slice(start).trimEnd());
  if (!found) return null;
  const [, ids = '', colon = '', reason = ''] = found;
  const at = text.indexOf(ids, start);
  const rules = [...ids.matchAll(/[a-z0-9-]+/gi)].map((each) => ({
    id: each[0].toLowerCase(),
    start: at + each.index,
    end: at + each.index + each[0].length,
  }));
  return { rules, reason: colon === '' ? '' : reason.trim(), start, end: text.trimEnd().length };
}

const allowProblems = (allow: Allow | null, text: string): Problem[] =>
  allow && allow.reason === '' ? [problem('allow-without-reason', allow, text.slice(allow.start, allow.end))] : [];

/** What stands between a header's keyword and its text: nothing, a comma, or a mark that is none of the notation's. */
const leadOf = (plain: string, from: number): { readonly length: number; readonly problems: readonly Problem[] } => {
  const [lead = '', mark = ''] = /^(?:,|([:=]))/.exec(plain.slice(from)) ?? [];
  const at = { start: from + lead.length - 1, end: from + lead.length };
  return { length: lead.length, problems: mark === '' ? [] : [problem('stray-mark', at, mark)] };
};

function readText(text: string, plain: string): RawLine {
  const word = firstWord.exec(plain);
  const keyword = word?.[1] ?? '';
  const start = plain.indexOf(keyword);
  const first: Word = { kind: 'word', text: keyword, start, end: start + keyword.length };
  const tail = /(?:^|\s)(#\s*allow\s.*)$/i.exec(plain);
  const end = tail ? plain.length - (tail[1]?.length ?? 0) : text.length;
  const lead = leadOf(plain, first.end);
  const rest = trimmed(text, first.end + lead.length, end);
  const allow = tail ? allowOf(plain, end) : null;
  const atoms: Atom[] = rest.text === '' ? [first] : [first, rest];
  const comment = tail ? trimmed(text, end, text.length) : null;
  return {
    text,
    plain,
    atoms,
    first,
    remark: null,
    comment,
    allow,
    problems: [...lead.problems, ...allowProblems(allow, plain)],
  };
}

const tooLong = (text: string): RawLine => ({
  text,
  plain: '',
  atoms: [],
  first: null,
  remark: null,
  comment: null,
  allow: null,
  problems: [
    problem('line-too-long', { start: 0, end: longestLine }, text.slice(0, 40), [], { length: String(text.length) }),
  ],
});

/** Reads one line, without a thought for where it stands. */
export function readRawLine(text: string): RawLine {
  if (text.length > longestLine) return tooLong(text);
  const plain = plainCharacters(text);
  if (isText(plain)) return readText(text, plain);
  const tokens = lexLine(plain);
  const problems: Problem[] = [];
  let remark: Text | null = null;
  let comment: Text | null = null;
  let allow: Allow | null = null;
  const last = tokens[tokens.length - 1];
  if (last?.tokenType === Comment) {
    comment = trimmed(text, last.startOffset, text.length);
    allow = allowOf(plain, last.startOffset);
    problems.push(...allowProblems(allow, plain));
    tokens.pop();
  }
  const before = tokens[tokens.length - 1];
  if (before?.tokenType === Remark) {
    remark = trimmed(text, before.startOffset + 1, before.startOffset + before.image.length);
    tokens.pop();
  }
  const quoted = tokens.find(
    (each) => each.tokenType === Quoted && (each.image.length < 2 || !each.image.endsWith('"')),
  );
  if (quoted)
    problems.push(
      problem(
        'unclosed-quote',
        { start: quoted.startOffset, end: quoted.startOffset + quoted.image.length },
        quoted.image,
        [`${quoted.image.trimEnd()}"`],
      ),
    );
  const atoms = parseAtoms(tokens);
  const first = atoms[0]?.kind === 'word' ? atoms[0] : null;
  return { text, plain, atoms, first, remark, comment, allow, problems };
}
