import { isGround } from './describe.ts';
import { lengthsOf, ofWork, type Statement, statementOf, textsOf, wordsOf } from './statement.ts';

export type Kind =
  | 'layer'
  | 'water'
  | 'level'
  | 'casing'
  | 'shoe'
  | 'bags'
  | 'fill'
  | 'screen'
  | 'hole'
  | 'total-depth'
  | 'test'
  | 'drawdown'
  | 'pump'
  | 'disinfection'
  | 'development'
  | 'lost'
  | 'dry'
  | 'abandonment'
  | 'hydrofracture';

export interface Clause {
  readonly kind: Kind | null;
  readonly text: string;
}

/** Commas that part nothing: in a date, and between figures. */
const keptCommas =
  /(\b(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]{0,6}\.? \d{1,2}(?:st|nd|rd|th)?),(?= ?'?\d{2})|(\d),(?=\d)/gi;
const keptComma = '\u0002';

/** Words that belong to the water behind them. */
const waterLeads = 'total fresh salt salty sulfur sulphur little trace hit found struck some more good of'
  .split(' ')
  .map((word) => `[${word.charAt(0)}${word.charAt(0).toUpperCase()}]${word.slice(1)}`)
  .join('|');

/** Where one thing said ends and the next begins. */
const joints = new RegExp(
  [
    '[;,]',
    String.raw`(?<=[a-z)"'\d?])\. +(?=[A-Z])`,
    ' (?=then )',
    String.raw` (?=(?:grouted|cemented (?:in|with|w\/)|sealed (?:with|w\/)))`,
    String.raw` (?:w\/ ?|with |and |& )(?=(?:wtr|water|h2o) ?(?:at|@))`,
    String.raw`(?<!${waterLeads}) (?=(?:wtr|water|h2o) ?(?:@|at \d))`,
  ].join('|'),
  'g',
);

const pieces = (text: string): string[] =>
  text
    .replace(
      keptCommas,
      (_, date: string | undefined, digit: string | undefined) => `${date ?? digit ?? ''}${keptComma}`,
    )
    .split(joints)
    .map((piece) =>
      piece
        .replaceAll(keptComma, ',')
        .trim()
        .replace(/(?<=[a-z)\d])\.$/i, ''),
    )
    .filter((piece) => piece !== '');

interface Sign {
  readonly kind: Kind;
  readonly form: RegExp;
}

const waterWord = String.raw`(?:wtr|(?:ground ?)?water|h2o|w\.b\.)`;

/** What the words of a clause make it, the first that fits. */
const signs: readonly Sign[] = [
  {
    kind: 'total-depth',
    form: /^(?:t\.?d\.?\b|total depth|(?:well|finished|final|hole) depth|depth of (?:well|hole)|bottom of (?:the )?hole|end of (?:the )?(?:bore)?hole|eoh\b|boh\b|total(?: footage)?:? (?=\d))/i,
  },
  {
    kind: 'level',
    form: /\b(?:swl|rwl|s\.w\.l\.?|static|rest (?:water )?level)\b|\b(?:water|wtr) (?:level|lvl|stands|stood|rests|rose)\b|\b(?:rose|rises|came up) to\b|^(?:wl|w\.l\.|dtw)\b|\bstanding water\b/i,
  },
  {
    kind: 'drawdown',
    form: /\b(?:drawdown|drew down|drawn down|draw down|pumping level|pumped down to|drew to)\b|^dd\b/i,
  },
  {
    kind: 'lost',
    form: /\blost (?:circ|circulation|returns?|water|fluid|mud)\b|\b(?:loss of|no) (?:circ|circulation|returns?)\b/i,
  },
  { kind: 'hydrofracture', form: /\bhydro-? ?frac\w*/i },
  { kind: 'disinfection', form: /\b(?:chlorinat\w+|disinfect\w+|shock ?chlor\w*)\b/i },
  { kind: 'development', form: /\bdevelop(?:ed|ment|ing)?\b/i },
  {
    kind: 'pump',
    form: /^(?:submersible |jet |hand )?pump (?:set|installed|at|hung|depth)\b|^(?:submersible|jet pump|hand pump)\b|^set pump\b|^installed .*\bpump\b/i,
  },
  {
    kind: 'abandonment',
    form: /\b(?:hole|well|boring|borehole)(?: was| is)? (?:back ?filled|plugged|abandoned|sealed|decommissioned|filled)\b|^(?:plugged|abandoned|decommissioned)\b/i,
  },
  { kind: 'screen', form: /\bscreen(?:ed)?\b/i },
  {
    kind: 'fill',
    form: /\b(?:grout(?:ed|ing)?|(?:gravel|filter|sand|gvl|silica) ?-?pack(?:ed)?|bent(?:onite)? (?:chips?|pellets?|seal|slurry|plug)|hole ?plug|annul(?:us|ar) (?:seal|fill\w*)|backfill(?:ed)?|neat cement|sealed)\b|^(?:cemented\b|cement\b|cmt\b|pack(?:ed)? |seal\b|benton?ite\b)/i,
  },
  { kind: 'shoe', form: /^(?:with |w\/ ?)?(?:a )?(?:(?:drive|drv|float|guide|ring|casing|csg) )?shoe\b/i },
  {
    kind: 'casing',
    form: /\b(?:csg|csng|casing|cased|liner)\b|\b(?:steel|pvc|plastic|galv\w*|stainless|drive) pipe\b|^pipe\b|^(?:drove|set|ran) .*\b(?:steel|pvc|plastic|pipe)\b/i,
  },
  {
    kind: 'test',
    form: /\b(?:pump(?:ed|ing)?|test(?:ed)?|bail(?:ed|er|ing)?|bl[eo]w(?:n|ing)?|air[ -]?lift(?:ed)?|yield(?:s|ed)?)\b/i,
  },
  { kind: 'hole', form: /\b(?:hole|borehole|bore|bit|reamed|drilled)\b/i },
];

/** A bit or a hole that is named before its size. */
const namesBit = /^(?:bit|hole)(?: size| dia\w*)\b/i;

const hasLength = (statement: Statement): boolean =>
  statement.tokens.some(({ kind }) => kind === 'length' || kind === 'interval');

const sizes = (statement: Statement): number =>
  lengthsOf(statement).filter(({ unit }) => unit === 'in' || unit === 'mm').length;

const startsWithDepths = ({ tokens }: Statement): boolean => tokens[0]?.kind === 'interval' && tokens[0].start === 0;

/** Words of work in the hole, behind which depths are not those of a layer. */
export const speaksOfWork =
  /\b(?:csg|casing|liner|grout|screen|hole|bit|gravel pack|filter pack|sand pack|pellets?|chips?|seal|lost|slot)\b/i;

/** True where the sign is meant, and not a word of the ground that looks like one. */
function isMeant({ kind }: Sign, statement: Statement): boolean {
  if (kind === 'test') return textsOf(statement, 'rate').length > 0;
  if (kind === 'hole') return sizes(ofWork(statement)) > 0 || namesBit.test(statement.text);
  if (kind === 'total-depth') return hasLength(statement) && textsOf(statement, 'rate').length === 0;
  if (kind === 'drawdown') return hasLength(statement) && textsOf(statement, 'rate').length === 0;
  if (kind === 'fill')
    return statement.tokens.length > 0 || /(?:grouted|cemented|sealed|packed|filled)\b/i.test(statement.text);
  if (kind === 'casing') return !/top of (?:the )?(?:csg|casing)/i.test(statement.text);
  return true;
}

/** Words that may stand with a rate and its depth. */
const besideRate = new RegExp(
  String.raw`^(?:at|@|total|found|${waterWord}|fresh|salty?|more|another|made|makes|making|gave|gives|produced|add(?:ed|itional)?|about|est\.?|to|ft|[\s,:()-])*$`,
  'i',
);

const namesWater = new RegExp(String.raw`(?<!\()\b${waterWord}(?! ?-?(?:bearing|brg|sand|gravel))\b`, 'i');

const isWater = (statement: Statement): boolean => {
  const words = wordsOf(statement);
  const hasRate = textsOf(statement, 'rate').length > 0;
  if (hasRate && besideRate.test(words)) return true;
  if (!namesWater.test(words)) return false;
  return hasLength(statement) || hasRate || /\b(?:hit|found|struck|encountered|first|made)\b/i.test(words);
};

/** What a clause is about; null where it goes on with what was said before it. */
export function kindOf(text: string, dates: 'dmy' | 'mdy' | null): Kind | null {
  const statement = statementOf(text, dates);
  if (/^dry(?: hole)?$/i.test(text)) return 'dry';
  if (startsWithDepths(statement) && !speaksOfWork.test(text))
    return /^[, ]*(?:wtr|water|h2o)(?: ?[:@]| found|$)/i.test(wordsOf(statement)) ||
      (textsOf(statement, 'rate').length > 0 && isWater(statement))
      ? 'water'
      : 'layer';
  const sign = signs.find((each) => each.form.test(text) && isMeant(each, statement));
  if (sign !== undefined) return sign.kind;
  if (textsOf(statement, 'bags').length > 0) return 'bags';
  if (isWater(statement)) return 'water';
  return statement.tokens.some(({ kind }) => kind === 'interval' || kind === 'length') ? 'layer' : null;
}

const fills = new Set<Kind | null>(['fill', 'bags']);

const isRateAlone = (statement: Statement): boolean =>
  textsOf(statement, 'rate').length > 0 && !hasLength(statement) && !/\b(?:total|wtr|water)\b/i.test(statement.text);

/** What tells more of a string: its stick-up, its perforations. */
const belongsToString = /\bstick ?-?up\b|\bwall(?: thickness)?$|^(?:perf\w*|slotted)\b|\babove (?:ground|grade)\b/i;

const isWordless = (text: string, dates: 'dmy' | 'mdy' | null): boolean =>
  /^(?:[\s.,]|\bto\b)*$/.test(wordsOf(statementOf(text, dates)));

const takesDepths = new Set<Kind | null>(['fill', 'bags', 'casing', 'screen', 'hole', 'lost', 'abandonment']);

/** Depths without a word, behind work that has none yet: `grout, 10 bags, 0-35`. */
function areItsDepths(piece: Clause, before: Clause, dates: 'dmy' | 'mdy' | null): boolean {
  if (piece.kind !== 'layer' || !takesDepths.has(before.kind)) return false;
  return (
    isWordless(piece.text, dates) && !statementOf(before.text, dates).tokens.some(({ kind }) => kind === 'interval')
  );
}

/** A figure with words that are no ground, behind a pipe or a hole: `125 mm stainless`. */
function isMoreOfIt(piece: Clause, before: Kind | null, dates: 'dmy' | 'mdy' | null): boolean {
  if (piece.kind !== 'layer' || !takesDepths.has(before)) return false;
  const statement = statementOf(piece.text, dates);
  return !statement.tokens.some(({ kind }) => kind === 'interval') && !isGround(wordsOf(statement));
}

/** Where a layer began with its depths, a later one does so too: other depths are told in its words, as `(15-25)`. */
function areInItsWords(piece: Clause, before: Clause, dates: 'dmy' | 'mdy' | null): boolean {
  if (piece.kind !== 'layer' || before.kind !== 'layer') return false;
  const statement = statementOf(piece.text, dates);
  return (
    statement.tokens.some(({ kind }) => kind === 'interval') &&
    !startsWithDepths(statement) &&
    startsWithDepths(statementOf(before.text, dates))
  );
}

/** True where a piece only goes on with the clause before it. */
function goesOn(piece: Clause, { kind: before, text }: Clause, dates: 'dmy' | 'mdy' | null): boolean {
  if (before === 'hydrofracture' && piece.kind === 'test') return true;
  if (piece.kind === null || areItsDepths(piece, { kind: before, text }, dates)) return true;
  if (isMoreOfIt(piece, before, dates) || areInItsWords(piece, { kind: before, text }, dates)) return true;
  if (piece.kind === 'bags') return fills.has(before);
  if (belongsToString.test(piece.text)) return before === 'casing';
  if (piece.kind === 'water') return before === 'water' && isRateAlone(statementOf(piece.text, dates));
  return piece.kind === 'drawdown' && before === 'test';
}

/** Words, and behind them the rest of the description and its depths: `sandy clay, 8 ft`, `clay, stiff 3 - 9`. */
function endsInDepths({ kind, text }: Clause, dates: 'dmy' | 'mdy' | null): boolean {
  const last = statementOf(text, dates).tokens.at(-1);
  return kind === 'layer' && last !== undefined && /^[\s.)\]]*$/.test(text.slice(last.end));
}

/** A line in pieces that say one thing each. */
export function clausesOf(text: string, dates: 'dmy' | 'mdy' | null): Clause[] {
  const clauses: Clause[] = [];
  for (const words of pieces(text)) {
    const last = clauses.at(-1);
    const found = { kind: kindOf(words, dates), text: words };
    const isNextBit = last?.kind === 'hole' && found.kind === 'layer' && isWordless(words, dates);
    const piece = isNextBit ? { kind: last.kind, text: `bit size ${words}` } : found;
    const isDepth = last?.kind === null && endsInDepths(piece, dates);
    if (last === undefined || !(isDepth || goesOn(piece, last, dates))) clauses.push(piece);
    else clauses[clauses.length - 1] = { kind: isDepth ? 'layer' : last.kind, text: `${last.text}, ${words}` };
  }
  return clauses;
}
