/** A date in the notes. */
export interface NoteDate {
  readonly start: number;
  readonly end: number;
  readonly written: string;
  /** YYYY-MM-DD, with `?` behind it where the century is not written; null where it could be two days or is none. */
  readonly iso: string | null;
  /** True where day and month could be either way round. */
  readonly ambiguous: boolean;
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const monthWord = `(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)`;
const year = String.raw`(?:\d{4}|'?\d{2})`;
const day = String.raw`\d{1,2}(?:st|nd|rd|th)?`;

const forms = new RegExp(
  [
    String.raw`(?<isoYear>\d{4})[-/.](?<isoMonth>\d{1,2})[-/.](?<isoDay>\d{1,2})`,
    String.raw`(?<dayFirst>${day})[ ./-]{0,2}(?:of )?(?<monthAfter>${monthWord})\b[ .,/-]{0,2}(?<yearAfter>${year})`,
    String.raw`(?<monthFirst>${monthWord})\b[ .-]{0,2}(?<dayAfter>${day}),? ?[-/]?(?<yearLast>${year})`,
    String.raw`(?<one>\d{1,2})(?<mark>[-/.])(?<two>\d{1,2})\k<mark>(?<end>\d{4}|\d{2})`,
  ]
    .map((form) => `(?:${form})`)
    .join('|')
    .replace(/^/, String.raw`(?<![\w./-])(?:`)
    .replace(/$/, String.raw`)(?![\w/]|[.-]\d)`),
  'gi',
);

const pad = (number: number): string => String(number).padStart(2, '0');

const monthOf = (word: string): number => months.indexOf(word.slice(0, 3).toLowerCase()) + 1;

/** The day as ISO 8601, or null where the calendar has none such. */
function isoOf(written: string, month: number, dayOfMonth: number): string | null {
  const short = written.replace("'", '');
  const whole = short.length === 2 ? `20${short}` : short;
  const iso = `${whole}-${pad(month)}-${pad(dayOfMonth)}`;
  const time = new Date(`${iso}T00:00:00Z`);
  if (Number.isNaN(time.getTime()) || time.toISOString().slice(0, 10) !== iso) return null;
  return short.length === 2 ? `${iso}?` : iso;
}

type Groups = Readonly<Record<string, string | undefined>>;

function figuresOnly({ one, two, end }: Groups, order: 'dmy' | 'mdy' | null): Pick<NoteDate, 'iso' | 'ambiguous'> {
  const [first, second] = [Number(one), Number(two)];
  const dayFirst = isoOf(end ?? '', second, first);
  const monthFirst = isoOf(end ?? '', first, second);
  if (dayFirst === null || monthFirst === null || dayFirst === monthFirst)
    return { iso: dayFirst ?? monthFirst, ambiguous: false };
  if (order === null) return { iso: null, ambiguous: true };
  return { iso: order === 'dmy' ? dayFirst : monthFirst, ambiguous: false };
}

function readGroups(groups: Groups, order: 'dmy' | 'mdy' | null): Pick<NoteDate, 'iso' | 'ambiguous'> {
  if (groups.one !== undefined) return figuresOnly(groups, order);
  const month = groups.isoMonth ? Number(groups.isoMonth) : monthOf(groups.monthAfter ?? groups.monthFirst ?? '');
  const dayOfMonth = Number.parseInt(groups.isoDay ?? groups.dayFirst ?? groups.dayAfter ?? '', 10);
  return {
    iso: isoOf(groups.isoYear ?? groups.yearAfter ?? groups.yearLast ?? '', month, dayOfMonth),
    ambiguous: false,
  };
}

/** Every date in a text. `order` says what `5/7/26` is; without it such a date is ambiguous. */
export const datesIn = (text: string, order: 'dmy' | 'mdy' | null): NoteDate[] =>
  [...text.matchAll(forms)].map((found) => ({
    start: found.index,
    end: found.index + found[0].length,
    written: found[0],
    ...readGroups(found.groups ?? {}, order),
  }));
