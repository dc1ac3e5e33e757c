import { rememberedOfLine } from '../../grammar/line-notes.ts';
import type { Columns } from '../../grammar/span.ts';
import type { Item, Line, Quantity, Value } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { wordsOf } from './words.ts';

/** Token types of the protocol's standard list, in the order of the legend. */
export const tokenTypes = [
  'keyword',
  'number',
  'type',
  'enumMember',
  'property',
  'string',
  'comment',
  'operator',
] as const;
export type TokenType = (typeof tokenTypes)[number];

export interface LineToken extends Columns {
  readonly type: TokenType;
}

const token = (type: TokenType, { start, end }: Columns): LineToken => ({ type, start, end });

function tokensOfQuantity({ start, end, unitAt }: Quantity): readonly LineToken[] {
  if (unitAt === null) return [token('number', { start, end })];
  const parts = [token('number', { start, end: unitAt.start }), token('type', unitAt)];
  return unitAt.end < end ? [...parts, token('number', { start: unitAt.end, end })] : parts;
}

function tokensOfValue(value: Value): readonly LineToken[] {
  if (value.kind === 'quantity') return tokensOfQuantity(value);
  if (value.kind === 'interval') return tokensOfDepths(value);
  if (value.kind === 'product') return value.factors.flatMap(tokensOfQuantity);
  if (value.kind === 'list') return value.values.flatMap(tokensOfValue);
  if (value.kind === 'text') return [token('string', value)];
  if (value.kind === 'flag') return [token('property', value)];
  return value.kind === 'term' || value.kind === 'description' ? [] : [token('number', value)];
}

function tokensOfDepths(depths: Line['depths']): readonly LineToken[] {
  if (depths === null) return [];
  if (depths.kind === 'quantity') return tokensOfQuantity(depths);
  const from = depths.from === null ? [] : tokensOfQuantity(depths.from);
  return [...from, token('operator', depths.dash), ...tokensOfQuantity(depths.to)];
}

const tokensOfItem = ({ label, value }: Item): readonly LineToken[] => [
  ...(label === null ? [] : [token('property', label)]),
  ...tokensOfValue(value),
];

const inOrder = (tokens: readonly LineToken[], length: number): readonly LineToken[] => {
  const sorted = tokens.filter(({ start, end }) => start < end && end <= length).sort((a, b) => a.start - b.start);
  return sorted.reduce<LineToken[]>((kept, each) => {
    if (each.start >= (kept.at(-1)?.end ?? 0)) kept.push(each);
    return kept;
  }, []);
};

function readTokens(line: Line): readonly LineToken[] {
  const tokens = [
    ...(line.keyword === null ? [] : [token('keyword', line.keyword)]),
    ...tokensOfDepths(line.depths),
    ...line.items.flatMap(tokensOfItem),
    ...wordsOf(line).map((word) => token('enumMember', word)),
    ...(line.remark === null ? [] : [token('string', line.remark)]),
    ...(line.comment === null ? [] : [token('comment', line.comment)]),
    ...(line.allow === null ? [] : [token('comment', line.allow)]),
  ];
  return inOrder(tokens, line.text.length);
}

/** The tokens of a line, from left to right, none over another. */
export const tokensOf = rememberedOfLine(readTokens);

/** The tokens of every line from `first` to `last`. */
export const semanticTokens = ({ tree }: Snapshot, first: number, last: number): readonly (readonly LineToken[])[] =>
  tree.lines.slice(first, last + 1).map(tokensOf);
