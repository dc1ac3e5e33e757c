import type { DepthUnit } from './notes.ts';

export type LengthUnit = 'm' | 'ft' | 'in' | 'cm' | 'mm';

/** A length as it stands in tidied text. */
export interface Length {
  readonly start: number;
  readonly end: number;
  /** In its unit; feet and inches in feet. */
  readonly value: number;
  /** Null where none is written. */
  readonly unit: LengthUnit | null;
  readonly plus: boolean;
  readonly about: boolean;
  readonly doubtful: boolean;
  /** Figure and unit as the notation takes them, without marks. */
  readonly figure: string;
  readonly unitText: string;
  /** Feet and inches with blanks between them, which could be two lengths. */
  readonly parted: boolean;
}

const fraction = String.raw`\d+\/(?:2|4|8|16|32|64)(?!\d)`;
const number = String.raw`(?:\d+[- ]${fraction}|${fraction}|\d+\.\d+|\.\d+|\d+)`;
const feetWord = String.raw`(?:ft\b\.?|feet\b|foot\b)`;
const inchWord = String.raw`(?:ins?\b\.?|inch(?:es)?\b)`;
const marked = String.raw`\d+'(?:\s?${number}"|${number}(?![\d.\/]|\s?['-]))`;
const spelled = String.raw`\d+\s?${feetWord}\s?(?:and )?${number}\s?${inchWord}`;
const unit = String.raw`(?:'|"|\s?(?:${feetWord}|${inchWord}|metres?\b|meters?\b|mtrs?\b|m\b\.?(?!\/)|cm\b|mm\b))`;

/** Not in the middle of a figure, a word or a name (`KH-04`, `O-12`). */
const notInside = String.raw`(?<!\d[,:])(?<![\w./#$'"])(?<!\b(?!(?:m|ft|in|cm|mm)-)[a-z]{1,2}-)`;

const pattern = new RegExp(
  String.raw`${notInside}(?<about>(?:~|\+\/-|\b(?:about|approx\.?|abt\.?|ca\.?|circa|roughly)\s)\s?)?(?<plus>\+\s?)?(?:(?<marked>${marked})|(?<spelled>${spelled})|(?<number>${number})(?<unit>${unit})?)(?<doubt>\s?\?)?(?![\w/%#]|[,:]\d|\.\d)`,
  'giu',
);

const unitsBySpelling: readonly (readonly [RegExp, LengthUnit])[] = [
  [/^(?:'|f)/i, 'ft'],
  [/^(?:"|in)/i, 'in'],
  [/^cm/i, 'cm'],
  [/^mm/i, 'mm'],
  [/^m/i, 'm'],
];

const unitOf = (spelling: string): LengthUnit => unitsBySpelling.find(([form]) => form.test(spelling))?.[1] ?? 'm';

/** The value of `6`, `.3`, `1/4`, `6-1/4`, `6 1/4`. */
export function figureValue(figure: string): number {
  const [, whole = '', over, under] = /^(?:(\d+)[- ])?(?:(\d+)\/(\d+))$/.exec(figure) ?? [];
  return over === undefined ? Number(figure) : Number(whole) + Number(over) / Number(under);
}

const numberAt = new RegExp(number, 'g');

const figureOf = (figure: string): string => figure.replace(' ', '-').replace(/^\./, '0.');

function lengthOf(found: RegExpExecArray): Length {
  const { about, plus, doubt, ...groups } = found.groups ?? {};
  const common = {
    start: found.index,
    end: found.index + found[0].length,
    plus: plus !== undefined,
    about: about !== undefined,
    doubtful: doubt !== undefined,
  };
  const joined = groups.marked ?? groups.spelled;
  if (joined === undefined) {
    const figure = groups.number ?? '';
    const written = groups.unit?.trim() ?? '';
    const named = written === '' ? null : unitOf(written);
    const isMark = written === "'" || written === '"';
    return {
      ...common,
      value: figureValue(figure),
      unit: named,
      figure: figureOf(figure),
      unitText: isMark && !figure.includes('/') ? written : (named ?? ''),
      parted: false,
    };
  }
  const [feet = '0', inches = '0'] = joined.match(numberAt) ?? [];
  const figure = `${feet}'${figureOf(inches)}"`;
  return {
    ...common,
    value: figureValue(feet) + figureValue(inches) / 12,
    unit: 'ft',
    figure,
    unitText: '',
    parted: /\s/.test(joined.trim()),
  };
}

/** Every length in a tidied text, in its order. Figures that could be misread (`1,5`, `3l`, `1.2.3`) are none. */
export const lengthsIn = (text: string): Length[] => [...text.matchAll(pattern)].map((found) => lengthOf(found));

const spelledUnit = ({ unitText }: Length): string =>
  unitText === '' || unitText === "'" || unitText === '"' ? unitText : ` ${unitText}`;

/** A length in the notation, its doubt as its last mark where `doubtful`. */
export function lengthText(length: Length, doubtful = length.doubtful): string {
  const isMark = length.unitText === "'" || length.unitText === '"' || length.figure.includes("'");
  const sign = `${length.about ? '~' : ''}${length.plus ? '+' : ''}`;
  const doubt = doubtful ? '?' : '';
  return isMark
    ? `${sign}${length.figure}${length.unitText}${doubt}`
    : `${sign}${length.figure}${doubt}${spelledUnit(length)}`;
}

const metres: Readonly<Record<LengthUnit, number>> = { m: 1, ft: 0.3048, in: 0.0254, cm: 0.01, mm: 0.001 };

/** A depth in metres, above ground negative. `end` is the other end of its interval, whose unit serves both. */
export const inMetres = (length: Length, bare: DepthUnit, end: Length | null = null): number =>
  (length.plus ? -1 : 1) * length.value * metres[length.unit ?? end?.unit ?? bare];
