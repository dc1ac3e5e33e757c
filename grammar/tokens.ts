import { createToken, createTokenInstance, type IToken, Lexer, type TokenType } from 'chevrotain';
import { units } from './units.ts';

const letter = 'A-Za-z_\\u00c0-\\u024f\\u0370-\\u03ff\\u0400-\\u04ff\\u1e00-\\u1eff';
const vulgar = '¼½¾⅛⅜⅝⅞';

/** Proper fractions of an inch: an odd numerator below its denominator 2, 4, 8, 16, 32 or 64. */
const inchFraction =
  '(?:1\\/2|[13]\\/4|[1357]\\/8|(?:[13579]|1[135])\\/16|(?:[12]?[13579]|31)\\/32|(?:[1-5]?[13579]|6[13])\\/64)(?![\\d\\/])';

/** The longest stretch of digits that is read as a number. */
export const longestFigure = 15;

const token = (name: string, pattern: RegExp, options: { categories?: TokenType[]; longer_alt?: TokenType } = {}) =>
  createToken({ name, pattern, ...options });

/** Any way of writing a number. */
export const Figure = createToken({ name: 'Figure', pattern: Lexer.NA });
/** Any mark or word that stands for itself. */
export const Loose = createToken({ name: 'Loose', pattern: Lexer.NA });

const endOf = (each: IToken): number => each.startOffset + each.image.length;

const isFigure = (each: IToken): boolean => each.tokenType.CATEGORIES?.includes(Figure) ?? false;

const countSpellings = new Set(units.filter((u) => u.dimension === 'count').flatMap((u) => u.spellings));

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&').replace(/ /g, ' ?');

const unitSpellings = [...new Set(units.flatMap((u) => [u.id.toLowerCase(), ...u.spellings]))].sort(
  (a, b) => b.length - a.length,
);

const unitPattern = new RegExp(
  `[-]?(?:${unitSpellings.map(escaped).join('|')})(?![${letter}0-9])(?:\\.(?![${letter}0-9]))?`,
  'iy',
);

const unitStart = new Set(
  [...unitSpellings.map((each) => each.charAt(0)), '-'].flatMap((each) => [each, each.toUpperCase()]),
);

type CustomPattern = (text: string, offset: number, matched: IToken[]) => RegExpExecArray | null;

const sticky = (pattern: RegExp, text: string, offset: number): RegExpExecArray | null => {
  pattern.lastIndex = offset;
  return pattern.exec(text);
};

const custom = (name: string, pattern: CustomPattern, starts: readonly string[], categories: TokenType[] = []) =>
  createToken({ name, pattern, start_chars_hint: [...starts], line_breaks: false, categories });

const matchUnit: CustomPattern = (text, offset, matched) => {
  if (!unitStart.has(text.charAt(offset))) return null;
  const before = matched[matched.length - 1];
  if (!before) return null;
  const afterUnit = before.tokenType === UnitWord;
  if (!afterUnit && !isFigure(before) && before.tokenType !== Doubt && before.tokenType !== Plus) return null;
  if (before.tokenType === Plus && !isFigure(matched[matched.length - 2] ?? before)) return null;
  const hyphen = text.charAt(offset) === '-';
  if (hyphen && endOf(before) !== offset) return null;
  const found = sticky(unitPattern, text, offset);
  if (!found || (hyphen && found[0].length === 1)) return null;
  return afterUnit && !countSpellings.has(found[0].toLowerCase()) ? null : found;
};

const timesPattern = new RegExp(`x(?=\\s*[~]?[\\d.?${vulgar}])`, 'iy');

const matchTimes: CustomPattern = (text, offset, matched) => {
  const before = matched[matched.length - 1];
  if (!before) return null;
  const fits =
    isFigure(before) || before.tokenType === UnitWord || before.tokenType === Doubt || before.tokenType === InchMark;
  return fits ? sticky(timesPattern, text, offset) : null;
};

const toPattern = new RegExp(`to(?=\\s*[~+<>]*\\s*[\\d.?${vulgar}]|\\s+td(?![${letter}0-9]))`, 'iy');

const matchTo: CustomPattern = (text, offset, matched) => {
  const before = matched[matched.length - 1];
  if (!before || (matched.length === 1 && before.tokenType === Word)) return sticky(toPattern, text, offset);
  const fits =
    isFigure(before) ||
    before.tokenType === UnitWord ||
    before.tokenType === Doubt ||
    before.tokenType === InchMark ||
    before.tokenType === DateFigure ||
    before.tokenType === Clock;
  return fits ? sticky(toPattern, text, offset) : null;
};

const afterDigit = new RegExp(`[\\d${vulgar}?]`);

const matchString: CustomPattern = (text, offset) =>
  offset > 0 && afterDigit.test(text.charAt(offset - 1)) ? null : sticky(/"[^"]*"?/y, text, offset);

const matchComment: CustomPattern = (text, offset, matched) => {
  const first = matched.length === 0 && text.slice(0, offset).trim() === '';
  return sticky(first ? /#[\s\S]*/y : /#(?!\d)[\s\S]*/y, text, offset);
};

export const Blank = createToken({ name: 'Blank', pattern: /[\s]+/, group: Lexer.SKIPPED, line_breaks: true });
export const Remark = createToken({ name: 'Remark', pattern: /;(?:[^#]|#(?!\s|$))*/, line_breaks: true });
export const Comment = custom('Comment', matchComment, ['#']);
export const HashFigure = token('HashFigure', /#\d+/, { categories: [Loose] });
export const Quoted = custom('Quoted', matchString, ['"'], [Loose]);

export const DateFigure = token(
  'DateFigure',
  /\d{4}-\d{1,2}-\d{1,2}(?:T(?=\d{2}:))?(?![\d])|\d{4}-\d{1,2}-\d{1,2}T(?=\d{2}:)/i,
);
export const SlashDate = token('SlashDate', /\d{1,4}\/\d{1,4}\/\d{1,4}/, { categories: [Loose] });
export const Clock = token('Clock', /\d{1,2}:\d{2}(?::\d{2})?(?![\d:])/);
export const ElapsedFigure = token('ElapsedFigure', /\d+h\d{1,2}(?![A-Za-z0-9])/i, { categories: [Figure] });
export const FeetInches = token(
  'FeetInches',
  new RegExp(
    `\\d+(?:\\.\\d+)?'(?!')(?:(?:\\d+[- ]${inchFraction}|${inchFraction}|\\d+(?:\\.\\d+)?(?: ?[${vulgar}])?|[${vulgar}])(?:"|'')?)?`,
  ),
  { categories: [Figure] },
);
export const MixedFigure = token('MixedFigure', new RegExp(`\\d+[- ]${inchFraction}`), { categories: [Figure] });
export const VulgarFigure = token('VulgarFigure', new RegExp(`(?:\\d+ ?)?[${vulgar}]`), { categories: [Figure] });
export const FractionFigure = token('FractionFigure', new RegExp(inchFraction), { categories: [Figure] });
export const Ratio = token('Ratio', /\d+\/\d+/, { categories: [Loose] });
export const CommaFigure = token('CommaFigure', /\d[\d.]*(?:,\d[\d.]*)+/, { categories: [Loose] });
export const PointsFigure = token('PointsFigure', /(?:\d+\.\d*|\.\d+)\.[\d.]*/, { categories: [Loose] });
export const PlainFigure = token('PlainFigure', /\d+(?:\.\d*)?|\.\d+/, { categories: [Figure] });

export const InchMark = token('InchMark', /"|''/, { categories: [Loose] });
export const Doubt = token('Doubt', /\?/, { categories: [Loose] });
export const Tilde = token('Tilde', /~/, { categories: [Loose] });
export const Plus = token('Plus', /\+/, { categories: [Loose] });
export const UnitWord = custom('UnitWord', matchUnit, [...unitStart], [Loose]);
export const Dash = token('Dash', /-/, { categories: [Loose] });
export const Bound = token('Bound', /[<>]/, { categories: [Loose] });
export const Comma = token('Comma', /,/, { categories: [Loose] });
export const And = token('And', /[&/]/, { categories: [Loose] });
export const Bracketed = token('Bracketed', /\([A-Za-z]{2,3}(?:[-/][A-Za-z]{2,3})?\)/, { categories: [Loose] });
export const Bracket = token('Bracket', /[()[\]]/, { categories: [Loose] });

export const Word = token('Word', new RegExp(`[${letter}](?:[${letter}0-9']|\\.(?=[${letter}0-9]))*\\.?`), {
  categories: [Loose],
});
export const WaterCement = token('WaterCement', /w\/c(?=\s*[~]?[\d.?])/i, { categories: [Loose] });
export const Without = token('Without', /w\/o(?:ut)?(?![A-Za-z])/i, { categories: [Loose] });
export const With = token('With', /w\//i, { categories: [Loose] });
export const Times = custom('Times', matchTimes, ['x', 'X'], [Loose]);
export const To = custom('To', matchTo, ['t', 'T'], [Loose]);
export const Bottom = token('Bottom', /td/i, { longer_alt: Word, categories: [Loose] });
/** What begins no other token. */
export const Other = createToken({ name: 'Other', pattern: Lexer.NA, categories: [Loose] });

/** Every token, in the order in which they are tried. */
export const tokens: TokenType[] = [
  Blank,
  UnitWord,
  Times,
  To,
  WaterCement,
  Without,
  With,
  Bottom,
  Word,
  Comma,
  DateFigure,
  SlashDate,
  Clock,
  ElapsedFigure,
  FeetInches,
  MixedFigure,
  VulgarFigure,
  FractionFigure,
  Ratio,
  CommaFigure,
  PointsFigure,
  PlainFigure,
  Dash,
  Remark,
  Comment,
  HashFigure,
  Quoted,
  InchMark,
  Doubt,
  Tilde,
  Plus,
  Bound,
  And,
  Bracketed,
  Bracket,
  Other,
  Figure,
  Loose,
];

let lexer: Lexer | null = null;

const strayToken = (text: string, startOffset: number, length: number): IToken => ({
  ...createTokenInstance(
    Other,
    text.slice(startOffset, startOffset + length),
    startOffset,
    startOffset + length - 1,
    1,
    1,
    1,
    1,
  ),
});

/** The tokens of one line. What no token begins with becomes a token of its own, so that no character is lost. */
export function lexLine(text: string): IToken[] {
  lexer ??= new Lexer(tokens, { positionTracking: 'onlyOffset', ensureOptimizations: false, skipValidations: true });
  const { tokens: found, errors } = lexer.tokenize(text);
  if (errors.length === 0) return found;
  const strays = errors.map(({ offset, length }) => strayToken(text, offset, length));
  return [...found, ...strays].sort((a, b) => a.startOffset - b.startOffset);
}
