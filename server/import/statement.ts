import * as l10n from '@vscode/l10n';
import { matchAt } from '../../grammar/terms/index.ts';
import type { ListId } from '../../grammar/terms/term.ts';
import { figureValue, type Length, lengthText } from './lengths.ts';
import { type Interval, type Token, type TokenKind, tokensIn } from './tokens.ts';

/** A piece of a tidied line that says one thing, with what it says in figures. */
export interface Statement {
  readonly text: string;
  readonly tokens: readonly Token[];
}

export const statementOf = (text: string, dates: 'dmy' | 'mdy' | null): Statement => ({
  text,
  tokens: tokensIn(text, { dates }),
});

export const intervalOf = ({ tokens }: Statement): Interval | null => {
  const found = tokens.find((token) => token.kind === 'interval');
  return found?.kind === 'interval' ? found.interval : null;
};

export const lengthsOf = ({ tokens }: Statement): Length[] =>
  tokens.flatMap((token) => (token.kind === 'length' ? [token.length] : []));

const isSized = ({ unit }: Length): boolean => unit === 'in' || unit === 'mm' || unit === 'cm';

/** Feet and inches with a blank between them, as a depth in feet and a size in inches, both in doubt. */
function parted(length: Length): readonly [depth: Length, size: Length] {
  const [, feet = '0', inches = '0'] = /^(\d+)'(.*)"$/.exec(length.figure) ?? [];
  const common = { ...length, doubtful: true, parted: false };
  const size = {
    ...common,
    figure: inches,
    value: figureValue(inches),
    unit: 'in' as const,
    unitText: 'in',
    plus: false,
  };
  return [{ ...common, figure: feet, value: Number(feet), unitText: 'ft' }, size];
}

const lengthToken = (length: Length): Token => ({
  kind: 'length',
  length,
  start: length.start,
  end: length.end,
  text: lengthText(length),
});

/** A size before `to` and a depth is no interval: `200 mm to 12 m`. */
function apart(token: Token): readonly Token[] {
  if (token.kind !== 'interval') return [token];
  const { from, to } = token.interval;
  return isSized(from) && from.unit !== to.unit ? [lengthToken(from), lengthToken(to)] : [token];
}

/** `40 - 140' 6"` where no other size is told: the inches may be the size. */
function withDoubtedSize(token: Token): readonly Token[] {
  if (token.kind !== 'interval' || !token.interval.to.parted) return [token];
  const [to, size] = parted(token.interval.to);
  const interval = { ...token.interval, to };
  return [{ ...token, interval, text: `${lengthText(interval.from)} - ${lengthText(to)}` }, lengthToken(size)];
}

/** A statement about a pipe or a hole: what of its figures is a size is told apart from its depths. */
export function ofWork(statement: Statement): Statement {
  const tokens = statement.tokens.flatMap(apart);
  const hasSize = tokens.some((token) => token.kind === 'size' || (token.kind === 'length' && isSized(token.length)));
  return { ...statement, tokens: hasSize ? tokens : tokens.flatMap(withDoubtedSize) };
}

/** The texts of all tokens of these kinds. */
export const textsOf = ({ tokens }: Statement, ...kinds: readonly (TokenKind | 'open-date')[]): string[] =>
  tokens.flatMap((token) => (kinds.some((kind) => kind === token.kind) ? [token.text] : []));

/** The text with a comma for each of its figures. */
export function wordsOf({ text, tokens }: Statement): string {
  let words = '';
  let at = 0;
  for (const { start, end } of tokens) {
    words += `${text.slice(at, start)} , `;
    at = end;
  }
  return (words + text.slice(at)).replace(/\s+/g, ' ').trim();
}

/** What stands before a token's place. */
export const before = ({ text }: Statement, { start }: { readonly start: number }): string => text.slice(0, start);

export const after = ({ text }: Statement, { end }: { readonly end: number }): string => text.slice(end);

const filler = new Set(
  'a an and as at by for from in into is it of on or the to up was were with w/ w @ & + - : ; , . ( ) = us used total'.split(
    ' ',
  ),
);

/** The terms of `lists` among words, in their order, and the words that are neither terms nor fillers. */
export function termsIn(
  text: string,
  lists: readonly ListId[],
  ignored: RegExp,
): { readonly terms: readonly { readonly list: ListId; readonly name: string }[]; readonly left: readonly string[] } {
  const words = text
    .replaceAll(',', ' , ')
    .split(/[\s;:()=]+/)
    .filter((word) => word !== '');
  const terms: { list: ListId; name: string }[] = [];
  const left: string[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? '';
    const match = matchAt(words, at, lists);
    const isIgnored = ignored.test(word);
    if (match !== null && !(isIgnored && match.length === 1)) {
      terms.push({ list: match.sense.list, name: match.sense.term.name });
      at += match.length - 1;
    } else if (!isIgnored && !filler.has(word.toLowerCase())) left.push(word);
  }
  return { terms, left };
}

/** `no place found for "a", "b"`, or nothing. */
export const notTaken = (left: readonly string[]): string[] =>
  left.length === 0 ? [] : [l10n.t('no place found for {0}', left.map((each) => `"${each}"`).join(', '))];
