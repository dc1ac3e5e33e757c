import { datesIn } from './dates.ts';
import { type Length, lengthsIn, lengthText } from './lengths.ts';
import type { ReadOptions } from './notes.ts';

export interface Interval {
  readonly from: Length;
  readonly to: Length;
}

interface Found {
  readonly start: number;
  readonly end: number;
  /** In the notation. */
  readonly text: string;
}

export type TokenKind =
  | 'date'
  | 'rate'
  | 'bags'
  | 'bag-mass'
  | 'time'
  | 'strength'
  | 'pressure'
  | 'power'
  | 'mass'
  | 'volume'
  | 'slot'
  | 'schedule'
  | 'size'
  | 'grading'
  | 'ratio'
  | 'share';

export type Token =
  | (Found & { readonly kind: TokenKind })
  | (Found & { readonly kind: 'open-date' })
  | (Found & { readonly kind: 'length'; readonly length: Length })
  | (Found & { readonly kind: 'interval'; readonly interval: Interval });

const figure = String.raw`(?:\d+[- ]\d+\/\d+|\d+\/\d+|\d+\.\d+|\.\d+|\d+)`;
const start = String.raw`(?<!\d[,:])(?<![\w./#])`;
const about = String.raw`(?:~ ?|\b(?:about|approx\.?|abt\.?) )?`;
const amount = String.raw`${about}[<>+]?${figure}(?: ?(?:-|to) ?${figure})?\+?\??`;

const gallons = String.raw`(?:gals?\.?|gallons?)`;
const minute = String.raw`(?: ?(?:\/|per|a|p\.?) ?min(?:ute)?s?\b\.?)`;
const hour = String.raw`(?: ?(?:\/|per|an) ?h(?:r|our)?\b\.?)`;
const second = String.raw`(?: ?(?:\/|per|a) ?s(?:ec(?:ond)?)?\b\.?)`;

interface Form {
  /** Spellings of its unit; null for a form that is no number with a unit. */
  readonly spellings: string | null;
  readonly kind: TokenKind;
  readonly pattern: RegExp;
  /** Its text in the notation, from the named groups `n` and the whole. */
  readonly text: (groups: Readonly<Record<string, string | undefined>>, whole: string) => string;
}

const plainNumber = (text = ''): string =>
  text
    .replace(/^(?:~ ?|(?:about|approx\.?|abt\.?) )/i, '~')
    .replace(/ ?(?:-|to) ?(?=[\d.]+(?![\d/]))/i, '-')
    .replace(/(^|[^\d])\.(?=\d)/g, '$10.')
    .replace(/^~?([\d.]+)\+$/, '>$1');

const withUnit =
  (unit: string) =>
  ({ n }: Readonly<Record<string, string | undefined>>): string =>
    `${plainNumber(n)} ${unit}`;

const measured = (kind: TokenKind, unit: string, spellings: string): Form => ({
  spellings,
  kind,
  pattern: new RegExp(`${start}(?<n>${amount}) ?(?:${spellings})(?![\\w/])`, 'giu'),
  text: withUnit(unit),
});

/** What is looked for before lengths, the longer forms first. */
const forms: readonly Form[] = [
  measured('rate', 'gpm-us', `us ?gpm|gpm-us|us ${gallons}${minute}`),
  measured('rate', 'gpm-imp', String.raw`igpm|imp\.? ?gpm|gpm-imp|imp(?:erial)?\.? ${gallons}${minute}`),
  measured('rate', 'gpm', String.raw`g\.?p\.?m\.?|${gallons}${minute}`),
  measured('rate', 'gph', `gph|${gallons}${hour}`),
  measured('rate', 'L/min', String.raw`lpm|l${minute}|lit(?:re|er)s?${minute}|l\/m`),
  measured('rate', 'L/s', `lps|l${second}|lit(?:re|er)s?${second}`),
  measured('rate', 'L/h', `lph|l${hour}|lit(?:re|er)s?${hour}`),
  measured('rate', 'm3/h', String.raw`m3${hour}|cu\.? ?m${hour}|m3ph`),
  measured('rate', 'm3/d', String.raw`m3 ?\/ ?d(?:ay)?`),
  measured('rate', 'cfm', `s?cfm`),
  {
    spellings: null,
    kind: 'bags',
    pattern: new RegExp(
      String.raw`${start}(?<n>\d+\??) ?(?:x|@) ?(?<mass>\d+(?:\.\d+)?) ?(?<unit>kg|lbs?)\.? ?(?:bags?|sacks?|sks?|sx)?\b`,
      'giu',
    ),
    text: ({ n, mass, unit = '' }) => `${n} x ${mass} ${unit.replace(/s$/i, '').toLowerCase()} bags`,
  },
  {
    spellings: null,
    kind: 'bags',
    pattern: new RegExp(
      String.raw`${start}(?<n>~?\d+(?:\.\d+)?\??) ?(?<mass>\d+(?:\.\d+)?) ?(?<unit>kg|lbs?)\.? ?(?:bags?|sacks?|sks?|sx)\b`,
      'giu',
    ),
    text: ({ n, mass, unit = '' }) => `${n} x ${mass} ${unit.replace(/s$/i, '').toLowerCase()} bags`,
  },
  measured('bags', 'bags', `bags?|sacks?|sks?|sx|bgs(?= )`),
  measured('bags', 'pails', 'pails?'),
  measured('time', 'h', 'hrs?\\b\\.?|hours?|h'),
  measured('time', 'min', 'mins?\\b\\.?|minutes?'),
  measured('time', 's', 'secs?\\b\\.?|seconds?'),
  measured('time', 'd', 'days?'),
  measured('strength', 'ppm', 'ppm|p\\.p\\.m\\.'),
  measured('strength', 'mg/L', 'mg\\/l'),
  measured('pressure', 'psi', 'psi'),
  measured('pressure', 'kPa', 'kpa'),
  measured('power', 'hp', 'h\\.?p\\.?'),
  measured('power', 'kW', 'kw'),
  measured('mass', 'kg', 'kgs?'),
  measured('mass', 'lb', 'lbs?\\b\\.?|pounds?'),
  measured('volume', 'gal-us', `us ${gallons}`),
  measured('volume', 'gal-imp', `imp(?:erial)?\\.? ${gallons}`),
  measured('volume', 'gal', gallons),
  measured('volume', 'yd3', 'cu\\.? ?y(?:ar)?ds?\\b\\.?|yd3|cubic yards?|yards?'),
  measured('volume', 'ft3', 'cu\\.? ?ft\\b\\.?|ft3|cubic feet'),
  measured('volume', 'm3', 'm3|cu\\.? ?m\\b\\.?|cubic met(?:re|er)s?'),
  measured('volume', 'L', 'lit(?:re|er)s?'),
  {
    spellings: null,
    kind: 'volume',
    pattern: new RegExp(`${start}(?<n>${amount})(?: ?L| l)(?![\\w/])`, 'gu'),
    text: withUnit('L'),
  },
  {
    spellings: null,
    kind: 'slot',
    pattern: new RegExp(`${start}(?<n>${figure}) ?(?<unit>in(?:ch)?\\b\\.?|"|mm)? ?slots?(?![a-z])`, 'giu'),
    text: slotText,
  },
  {
    spellings: null,
    kind: 'slot',
    pattern: new RegExp(`\\bslots? (?:size )?(?<hash>#)?(?<n>${figure}) ?(?<unit>in(?:ch)?\\b\\.?|"|mm)?`, 'giu'),
    text: slotText,
  },
  { spellings: null, kind: 'slot', pattern: /#(?<n>\d+) ?slots?\b/giu, text: ({ n }) => `slot #${n}` },
  {
    spellings: null,
    kind: 'schedule',
    pattern: /\bsch(?:ed(?:ule)?)?\.? ?(?<n>\d+)\b/giu,
    text: ({ n }) => `sch ${n}`,
  },
  { spellings: null, kind: 'schedule', pattern: /\bs?dr[- ]?(?<n>\d+(?:\.\d+)?)\b/giu, text: ({ n }) => `sdr ${n}` },
  {
    spellings: null,
    kind: 'ratio',
    pattern: /\bw\/c(?: ratio)? ?(?<n>\d*\.\d+|\d+)/giu,
    text: ({ n }) => `w/c ${plainNumber(n)}`,
  },
  {
    spellings: null,
    kind: 'size',
    pattern: new RegExp(
      String.raw`${start}(?<n>${figure}) ?(?<first>"|in\b\.?|mm\b)? ?(?:od )?x ?(?<m>${figure}) ?(?<last>"|in\b\.?|mm\b)?(?: wall)?(?![\w/'#])`,
      'giu',
    ),
    text: ({ n, m, first, last }) => `${hyphened(n)}${sizeUnit(first)} x ${hyphened(m)}${sizeUnit(last)}`,
  },
  {
    spellings: null,
    kind: 'grading',
    pattern: /(?<![\w./-])(?<n>\d{1,3}\/\d{1,3})(?= (?:sand|silica|filter|gravel|pack|mesh))/giu,
    text: ({ n = '' }) => n,
  },
  {
    spellings: null,
    kind: 'share',
    pattern: new RegExp(`${start}${figure} ?(?:%|percent\\b|per cent\\b)`, 'giu'),
    text: (_, whole) => whole,
  },
];

function hyphened(text = ''): string {
  return text.replace(' ', '-').replace(/^\./, '0.');
}

function sizeUnit(written: string | undefined): string {
  if (written === undefined) return '';
  return written.toLowerCase() === 'mm' ? ' mm' : ' in';
}

function slotText({ n = '', unit, hash }: Readonly<Record<string, string | undefined>>): string {
  const plain = hyphened(n);
  if (hash !== undefined) return `slot #${plain}`;
  if (unit !== undefined) return `slot ${plain}${sizeUnit(unit)}`;
  return `slot ${plain}`;
}

/** A number with any unit at all: where it finds nothing, the forms of single units need not be tried. */
const anyUnit = new RegExp(
  `\\d\\+?\\?? ?(?:${forms.flatMap(({ spellings }) => spellings ?? []).join('|')}|L)(?![\\w/])`,
  'iu',
);

const blanked = (text: string, { start: from, end }: { start: number; end: number }): string =>
  `${text.slice(0, from)}${'\u0001'.repeat(end - from)}${text.slice(end)}`;

const between = /^\s?(?:-+|to|thru|through|till?|until|down to|and)\s?$/i;

function joinedLengths(text: string, lengths: readonly Length[]): Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < lengths.length; at++) {
    const from = lengths[at];
    const to = lengths[at + 1];
    if (from === undefined) continue;
    const joint = to === undefined ? '' : text.slice(from.end, to.start);
    const isPair = between.test(joint) && (!/and/i.test(joint) || /\bbetween $/i.test(text.slice(0, from.start)));
    if (to !== undefined && isPair) {
      const lead = /\b(?:from|between) $/i.exec(text.slice(0, from.start))?.[0].length ?? 0;
      const interval = { from, to };
      tokens.push({ kind: 'interval', interval, start: from.start - lead, end: to.end, text: intervalText(interval) });
      at++;
    } else tokens.push({ kind: 'length', length: from, start: from.start, end: from.end, text: lengthText(from) });
  }
  return tokens;
}

/** An interval in the notation. */
export const intervalText = ({ from, to }: Interval): string => `${lengthText(from)} - ${lengthText(to)}`;

function freshTokens(text: string, options: Pick<ReadOptions, 'dates'>): Token[] {
  const tokens: Token[] = [];
  if (!/\d/.test(text)) return tokens;
  let left = text;
  for (const { start: from, end, written, iso } of datesIn(text, options.dates)) {
    tokens.push({ kind: iso === null ? 'open-date' : 'date', start: from, end, text: iso ?? written });
    left = blanked(left, { start: from, end });
  }
  const hasUnit = anyUnit.test(text);
  for (const { kind, pattern, spellings, text: write } of forms) {
    if (spellings !== null && !hasUnit) continue;
    const found = [...left.matchAll(pattern)];
    for (const match of found) {
      const token = { kind, start: match.index, end: match.index + match[0].length };
      tokens.push({ ...token, text: write(match.groups ?? {}, match[0]) });
      left = blanked(left, token);
    }
  }
  tokens.push(...joinedLengths(left, lengthsIn(left)));
  return tokens.sort((a, b) => a.start - b.start);
}

const mostKept = 64;
const kept = new Map<string, readonly Token[]>();

/**
 * What a tidied text says in figures, in its order; each stretch of it belongs to one token. A line is asked about several
 * times on its way, so that the last answers are kept.
 */
export function tokensIn(text: string, options: Pick<ReadOptions, 'dates'>): readonly Token[] {
  const key = `${options.dates}:${text}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  if (kept.size >= mostKept) kept.clear();
  const tokens = freshTokens(text, options);
  kept.set(key, tokens);
  return tokens;
}
