import { amount } from './amount.ts';
import { capKind } from './cap-kind.ts';
import { casingMaterial } from './casing-material.ts';
import { casingState } from './casing-state.ts';
import { classSymbol } from './class-symbol.ts';
import { colour } from './colour.ts';
import { consistency } from './consistency.ts';
import { contaminantSource } from './contaminant-source.ts';
import { content } from './content.ts';
import { degree } from './degree.ts';
import { developmentMethod } from './development-method.ts';
import { disinfectant } from './disinfectant.ts';
import { extent } from './extent.ts';
import { fillMaterial } from './fill-material.ts';
import { flowControl } from './flow-control.ts';
import { flush } from './flush.ts';
import { formation } from './formation.ts';
import { fracturing } from './fracturing.ts';
import { gasKind } from './gas-kind.ts';
import { geodeticDatum } from './geodetic-datum.ts';
import { grainShape } from './grain-shape.ts';
import { grainSize } from './grain-size.ts';
import { holeMethod } from './hole-method.ts';
import { jointType } from './joint-type.ts';
import { layer } from './layer.ts';
import { material } from './material.ts';
import { moisture } from './moisture.ts';
import { packerKind } from './packer-kind.ts';
import { pitlessKind } from './pitless-kind.ts';
import { placement } from './placement.ts';
import { pumpKind } from './pump-kind.ts';
import { quality } from './quality.ts';
import { screenKind } from './screen-kind.ts';
import { shade } from './shade.ts';
import { shoeKind } from './shoe-kind.ts';
import { sorting } from './sorting.ts';
import { status } from './status.ts';
import { structure } from './structure.ts';
import type { ListId, Term, TermList } from './term.ts';
import { testMethod } from './test-method.ts';
import { use } from './use.ts';
import { waterKind } from './water-kind.ts';
import { weather } from './weather.ts';
import { weathering } from './weathering.ts';

/** What a form may mean: a term of a list, or (for materials) its adjective. */
export interface Sense {
  readonly list: ListId;
  readonly term: Term;
  readonly adjective: boolean;
}

export const termLists: readonly TermList[] = [
  material,
  colour,
  shade,
  amount,
  degree,
  consistency,
  moisture,
  grainSize,
  grainShape,
  sorting,
  fracturing,
  weathering,
  structure,
  content,
  layer,
  formation,
  classSymbol,
  holeMethod,
  flush,
  casingMaterial,
  jointType,
  casingState,
  shoeKind,
  screenKind,
  fillMaterial,
  placement,
  packerKind,
  waterKind,
  gasKind,
  flowControl,
  testMethod,
  developmentMethod,
  disinfectant,
  pumpKind,
  capKind,
  pitlessKind,
  quality,
  contaminantSource,
  geodeticDatum,
  extent,
  weather,
  use,
  status,
];

/** The lists that a strata description draws on; where a form stands in two, the first list has it. */
export const descriptionLists: readonly ListId[] = [
  'material',
  'colour',
  'shade',
  'amount',
  'degree',
  'consistency',
  'moisture',
  'grain-size',
  'grain-shape',
  'sorting',
  'fracturing',
  'weathering',
  'structure',
  'content',
  'layer',
  'formation',
];

interface Index {
  /** Every form, normalised, and what it may mean. */
  readonly senses: ReadonlyMap<string, readonly Sense[]>;
  /** A one-word short form of a description term, and the one word that it stands for. */
  readonly longWords: ReadonlyMap<string, string>;
  /** The number of words of the longest form that begins with a word. */
  readonly longest: ReadonlyMap<string, number>;
}

const blank = 32;

/** True for small letters with blanks between them. */
const isPlain = (form: string): boolean => {
  const last = form.length - 1;
  for (let at = 0; at <= last; at += 1) {
    const code = form.charCodeAt(at);
    if ((code < 97 || code > 122) && (code !== blank || at === 0 || at === last)) return false;
  }
  return true;
};

/** Lower case, without full stops and apostrophes, hyphens as blanks. */
export const normalise = (form: string): string =>
  isPlain(form)
    ? form
    : form
        .toLowerCase()
        .replace(/[.'’]/g, '')
        .replace(/[-\u2010\u2011]/g, ' ')
        .trim();

const sensesOf = (list: ListId, term: Term): readonly (readonly [string, Sense])[] => {
  const noun: Sense = { list, term, adjective: false };
  const nouns = [term.name, ...term.short].map((form) => [normalise(form), noun] as const);
  const adjective = term.ground?.adjective;
  if (adjective === undefined) return nouns;
  const sense: Sense = { list, term, adjective: true };
  const spellings = [adjective, ...(term.ground?.adjectiveShort ?? [])];
  return [...nouns, ...spellings.map((form) => [normalise(form), sense] as const)];
};

/** The words that the formatter writes for a sense. */
export const longForm = (sense: Sense): string =>
  sense.adjective ? (sense.term.ground?.adjective ?? sense.term.name) : sense.term.name;

const inDescriptions = new Set(descriptionLists);

const longWordsOf = (entries: readonly (readonly [string, Sense])[]): Map<string, string> => {
  const words = new Map<string, string>();
  for (const [form, sense] of entries) {
    if (form.includes(' ') || words.has(form) || !inDescriptions.has(sense.list)) continue;
    const long = normalise(longForm(sense));
    if (!long.includes(' ')) words.set(form, long);
  }
  return words;
};

const spelledOut = (form: string, longWords: ReadonlyMap<string, string>): string =>
  form
    .split(' ')
    .map((word) => longWords.get(word) ?? word)
    .join(' ');

const firstAndCount = (form: string): readonly [string, number] => {
  const words = form.split(' ');
  return [words[0] ?? '', words.length];
};

const buildIndex = (): Index => {
  const senses = new Map<string, Sense[]>();
  const longest = new Map<string, number>();
  const entries = termLists.flatMap((list) => list.terms.flatMap((term) => sensesOf(list.id, term)));
  const longWords = longWordsOf(entries);
  const add = (form: string, sense: Sense): void => {
    const known = senses.get(form);
    if (known?.some((other) => other.list === sense.list)) return;
    if (known) known.push(sense);
    else senses.set(form, [sense]);
    const [first, words] = form.includes(' ') ? firstAndCount(form) : [form, 1];
    longest.set(first, Math.max(longest.get(first) ?? 1, words));
  };
  for (const [form, sense] of entries) add(form, sense);
  for (const [form, sense] of entries) if (form.includes(' ')) add(spelledOut(form, longWords), sense);
  return { senses, longWords, longest };
};

let built: Index | null = null;

const index = (): Index => {
  built ??= buildIndex();
  return built;
};

/** Every meaning of a form, in the order of the lists. */
export const lookup = (form: string): readonly Sense[] => index().senses.get(normalise(form)) ?? [];

const senseIn = (senses: readonly Sense[], lists: readonly ListId[]): Sense | null => {
  const only = senses[0];
  if (senses.length === 1 && only !== undefined) return lists.includes(only.list) ? only : null;
  for (const list of lists) {
    const sense = senses.find((candidate) => candidate.list === list);
    if (sense !== undefined) return sense;
  }
  return null;
};

const joined = (
  words: readonly string[],
  at: number,
  length: number,
  long: ReadonlyMap<string, string> | null,
): string => {
  let form = '';
  for (let step = at; step < at + length; step += 1) {
    const word = normalise(words[step] ?? '');
    form += `${step === at ? '' : ' '}${long === null ? word : (long.get(word) ?? word)}`;
  }
  return form;
};

const longestFrom = (word: string): number => {
  const { longest, longWords } = index();
  const long = longWords.get(word);
  return Math.max(longest.get(word) ?? 1, long === undefined ? 1 : (longest.get(long) ?? 1));
};

/** The longest form of one of `lists` that begins at a word; of two lists that have it, the one named first. */
export const matchAt = (
  words: readonly string[],
  at: number,
  lists: readonly ListId[],
): { length: number; sense: Sense } | null => {
  const first = words[at];
  if (first === undefined) return null;
  const { senses, longWords } = index();
  const firstKey = normalise(first);
  for (let length = Math.min(longestFrom(firstKey), words.length - at); length > 0; length -= 1) {
    const asWritten = senses.get(length === 1 ? firstKey : joined(words, at, length, null));
    const found = asWritten ?? (length === 1 ? undefined : senses.get(joined(words, at, length, longWords)));
    const sense = found === undefined ? null : senseIn(found, lists);
    if (sense !== null) return { length, sense };
  }
  return null;
};

const widest = 128;
let beforeLast = new Uint16Array(widest);
let last = new Uint16Array(widest);
let current = new Uint16Array(widest);

const costAt = (a: string, b: string, row: number, column: number): number => {
  const letter = a.charCodeAt(row - 1);
  const step = letter === b.charCodeAt(column - 1) ? 0 : 1;
  const [insert, remove, replace] = [last[column] ?? 0, current[column - 1] ?? 0, last[column - 1] ?? 0];
  const plain = Math.min(insert + 1, remove + 1, replace + step);
  const isSwap =
    row > 1 && column > 1 && letter === b.charCodeAt(column - 2) && a.charCodeAt(row - 2) === b.charCodeAt(column - 1);
  return isSwap ? Math.min(plain, (beforeLast[column - 2] ?? 0) + 1) : plain;
};

/** Fills the next row and gives its least cost. */
const nextRow = (a: string, b: string, row: number): number => {
  [beforeLast, last, current] = [last, current, beforeLast];
  current[0] = row;
  let least = row;
  for (let column = 1; column <= b.length; column += 1) {
    const cost = costAt(a, b, row, column);
    current[column] = cost;
    if (cost < least) least = cost;
  }
  return least;
};

/** Damerau and Levenshtein's distance with neighbours swapped counted as one, or more than `limit` where it is more than that. */
const distance = (a: string, b: string, limit: number): number => {
  if (b.length >= widest) return limit + 1;
  for (let column = 0; column <= b.length; column += 1) current[column] = column;
  for (let row = 1; row <= a.length; row += 1) if (nextRow(a, b, row) > limit) return limit + 1;
  return current[b.length] ?? limit + 1;
};

/** The letters of a form as bits; one slip changes two of them at most. */
const lettersOf = (form: string): number => {
  let letters = 0;
  for (let at = 0; at < form.length; at += 1) letters |= 1 << (form.charCodeAt(at) & 31);
  return letters;
};

/** How many bits are set, counted side by side. */
const bitsOf = (letters: number): number => {
  const pairs = letters - ((letters >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
};

/** A form that others may be near to, with its letters. */
interface NearForm {
  readonly form: string;
  readonly letters: number;
  readonly senses: readonly Sense[];
}

/** The forms of at least three letters, by how many they have. */
let nearForms: Map<number, NearForm[]> | null = null;

const formsByLength = (): Map<number, NearForm[]> => {
  const byLength = new Map<number, NearForm[]>();
  for (const [form, senses] of index().senses) {
    const { length } = form;
    if (length < 3) continue;
    const near = { form, letters: lettersOf(form), senses };
    const known = byLength.get(length);
    if (known) known.push(near);
    else byLength.set(length, [near]);
  }
  return byLength;
};

const none: readonly NearForm[] = [];

const formsOfLength = (length: number): readonly NearForm[] => {
  nearForms ??= formsByLength();
  return nearForms.get(length) ?? none;
};

const nearnessLimit = (length: number): number => (length <= 3 ? 1 : length <= 6 ? 2 : 3);

/** Up to `count` terms of `lists` whose forms are spelled nearly like `form`, nearest first, and those that are written so before those of which it is a short form. */
export const nearest = (form: string, lists: readonly ListId[], count: number): readonly Sense[] => {
  const key = normalise(form);
  const limit = nearnessLimit(key.length);
  const letters = lettersOf(key);
  const best = new Map<string, { sense: Sense; far: number; short: number }>();
  const tryForm = (known: NearForm): void => {
    if (bitsOf(letters ^ known.letters) > 2 * limit) return;
    const far = distance(key, known.form, limit);
    const sense = far > limit ? null : senseIn(known.senses, lists);
    if (sense === null) return;
    const long = longForm(sense);
    const short = known.form === normalise(long) ? 0 : 1;
    const name = `${sense.list} ${long}`;
    const before = best.get(name);
    if (before === undefined || far < before.far || (far === before.far && short < before.short))
      best.set(name, { sense, far, short });
  };
  for (let length = key.length - limit; length <= key.length + limit; length += 1)
    for (const known of formsOfLength(length)) tryForm(known);
  return [...best.values()]
    .sort((a, b) => a.far - b.far || a.short - b.short || longForm(a.sense).localeCompare(longForm(b.sense), 'en'))
    .slice(0, count)
    .map(({ sense }) => sense);
};

const shortestSlip = 4;

/** True where a term of `lists` is spelled like `form` but for one letter; never for a form of three letters or fewer. */
export const isNear = (form: string, lists: readonly ListId[]): boolean => {
  const key = normalise(form);
  if (key.length < shortestSlip) return false;
  const letters = lettersOf(key);
  for (let length = key.length - 1; length <= key.length + 1; length += 1)
    for (const known of formsOfLength(length))
      if (
        bitsOf(letters ^ known.letters) <= 2 &&
        distance(key, known.form, 1) <= 1 &&
        senseIn(known.senses, lists) !== null
      )
        return true;
  return false;
};
