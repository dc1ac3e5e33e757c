import { EmbeddedActionsParser, type IToken, tokenMatcher } from 'chevrotain';
import { type Atom, type Bad, type Mark, problem } from './atoms.ts';
import { commaReadings, figureOf, isTooLong, pointReadings } from './figures.ts';
import { isDate, isTime, paddedDate, paddedTime, slashDateReadings } from './moments.ts';
import {
  And,
  Bottom,
  Bound,
  Bracket,
  Bracketed,
  Clock,
  Comma,
  CommaFigure,
  Dash,
  DateFigure,
  Doubt,
  Figure,
  HashFigure,
  InchMark,
  Loose,
  PlainFigure,
  Plus,
  PointsFigure,
  Quoted,
  Ratio,
  SlashDate,
  Tilde,
  Times,
  To,
  tokens,
  UnitWord,
  WaterCement,
  With,
  Without,
  Word,
} from './tokens.ts';
import type { Interval, Moment, Period, Product, Quantity } from './tree.ts';
import { type Unit, unitById, unitBySpelling } from './units.ts';

/** While the parser records its own grammar, tokens have no image. */
const endOf = (token: IToken): number => token.startOffset + (token.image ?? '').length;

const glued = (before: IToken, after: IToken): boolean => endOf(before) === after.startOffset;

const inch = unitById('in') ?? null;

const unitOf = (token: IToken): Unit | null =>
  tokenMatcher(token, InchMark) ? inch : (unitBySpelling(token.image.replace(/^-/, '').replace(/\.$/, '')) ?? null);

/** What stands around a number. */
interface Marks {
  start: number;
  end: number;
  approximate: boolean;
  doubtful: boolean;
  bound: '<' | '>' | null;
  plus: boolean;
}

function quantity(marks: Marks, figure: IToken, unit: IToken | null): Quantity {
  const unknown = tokenMatcher(figure, Doubt);
  const td = tokenMatcher(figure, Bottom);
  const value = unknown || td ? null : figureOf(figure);
  return {
    kind: 'quantity',
    start: marks.start,
    end: marks.end,
    approximate: marks.approximate,
    doubtful: marks.doubtful,
    bound: marks.bound,
    plus: marks.plus,
    minus: false,
    number: value?.number ?? null,
    high: null,
    unit: unit ? unitOf(unit) : (value?.unit ?? null),
    unitAt: unit ? { start: unit.startOffset, end: endOf(unit) } : null,
    decimals: value?.decimals ?? 0,
    form: value?.form ?? 'plain',
    td,
    datum: null,
    figure: figure.image,
  };
}

const isLength = (unit: Unit | null): boolean => unit === null || unit.dimension === 'length';

/** `a - b` of lengths is an interval; of any other kind it is one value with two ends. */
function intervalOrRange(from: Quantity, dash: IToken, to: Quantity): Interval | Quantity {
  const sharedUnit = from.unit ?? to.unit;
  if (isLength(to.unit) && isLength(from.unit)) {
    return {
      kind: 'interval',
      from: from.unit === null && !from.td ? { ...from, unit: to.unit } : from,
      to,
      dash: { start: dash.startOffset, end: endOf(dash) },
      start: from.start,
      end: to.end,
    };
  }
  return {
    ...from,
    high: to.number,
    unit: to.unit ?? sharedUnit,
    unitAt: to.unitAt ?? from.unitAt,
    decimals: Math.max(from.decimals, to.decimals),
    approximate: from.approximate || to.approximate,
    doubtful: from.doubtful || to.doubtful,
    end: to.end,
  };
}

function joinFeetAndInches(feet: Quantity, inches: Quantity): Quantity {
  if (feet.number === null || inches.number === null) return feet;
  return {
    ...feet,
    number: feet.number + inches.number / 12,
    decimals: 2,
    form: 'feet-inches',
    figure: `${feet.figure}'${inches.figure}"`,
    doubtful: feet.doubtful || inches.doubtful,
    unitAt: inches.unitAt,
    end: inches.end,
  };
}

function moment(date: IToken | null, time: IToken | null, approximate: boolean, doubt: IToken | null): Moment | Bad {
  const first = date ?? time;
  const last = doubt ?? time ?? date;
  const start = first?.startOffset ?? 0;
  const end = last ? endOf(last) : start;
  const written = `${date?.image ?? ''}${date && time ? ' ' : ''}${time?.image ?? ''}`;
  const day = date ? paddedDate(date.image) : null;
  const hour = time ? paddedTime(time.image) : null;
  if (day !== null && (!isDate(day) || day !== date?.image.replace(/t$/i, '')))
    return {
      kind: 'bad',
      start,
      end,
      problem: problem('bad-date', { start, end }, written, isDate(day) ? [[day, hour].filter(Boolean).join(' ')] : []),
    };
  if (hour !== null && !isTime(hour))
    return { kind: 'bad', start, end, problem: problem('bad-time', { start, end }, written) };
  return { kind: 'moment', date: day, time: hour, approximate, doubtful: doubt !== null, start, end };
}

const wordAtom = ({ image, startOffset: start }: IToken): Atom => ({
  kind: 'word',
  text: image,
  start,
  end: start + image.length,
});

const commaAtom = ({ image, startOffset: start }: IToken): Mark => ({
  kind: 'mark',
  mark: 'comma',
  text: image,
  start,
  end: start + image.length,
});

/** True for what begins no value and belongs to none. */
const standsAlone = ({ tokenType }: IToken): boolean => tokenType === Word || tokenType === Comma;

function looseAtom(token: IToken): Atom {
  const at = { start: token.startOffset, end: endOf(token) };
  const { image } = token;
  const mark = (name: Mark['mark']): Mark => ({ kind: 'mark', mark: name, text: image, ...at });
  const bad = (
    code: 'decimal-comma' | 'two-points' | 'bad-date' | 'stray-mark' | 'unreadable',
    meant: string[],
  ): Bad => ({
    kind: 'bad',
    problem: problem(code, at, image, meant),
    ...at,
  });
  switch (token.tokenType) {
    case Word:
    case UnitWord:
    case To:
    case Times:
    case Bottom:
    case WaterCement:
    case Without:
      return wordAtom(token);
    case Comma:
      return commaAtom(token);
    case And:
    case Plus:
      return mark('and');
    case With:
      return mark('with');
    case Dash:
      return mark('dash');
    case Bracketed:
      return { kind: 'symbol', text: image.slice(1, -1), ...at };
    case Bracket:
      return mark('bracket');
    case Quoted:
      return { kind: 'text', text: image.replace(/^"|"$/g, ''), ...at };
    case Doubt:
      return { kind: 'unknown', ...at };
    case HashFigure:
      return { kind: 'hash-number', number: Number(image.slice(1)), ...at };
    case Ratio: {
      const [coarse = '', fine = ''] = image.split('/');
      return { kind: 'grading', coarse: Number(coarse), fine: Number(fine), ...at };
    }
    case CommaFigure:
      return bad('decimal-comma', commaReadings(image));
    case PointsFigure:
      return bad('two-points', pointReadings(image));
    case SlashDate:
      return bad('bad-date', slashDateReadings(image));
    default:
      return image === '@' ? mark('at') : bad('stray-mark', []);
  }
}

/** The values of a line: numbers with their marks and units, intervals, sizes, dates, words. */
class LineParser extends EmbeddedActionsParser {
  constructor() {
    super(tokens, { recoveryEnabled: false, maxLookahead: 1, skipValidations: true });
    this.performSelfAnalysis();
  }

  private startsValue(at: number): boolean {
    let k = at;
    while (tokenMatcher(this.LA(k), Tilde) || tokenMatcher(this.LA(k), Bound) || tokenMatcher(this.LA(k), Plus)) k++;
    const token = this.LA(k);
    return (
      tokenMatcher(token, Figure) ||
      (tokenMatcher(token, Doubt) && this.doubtIsValue(k)) ||
      (k === at && tokenMatcher(token, Bottom) && at > 1)
    );
  }

  private doubtIsValue(k: number): boolean {
    const next = this.LA(k + 1);
    return (
      tokenMatcher(next, UnitWord) ||
      this.isDash(k + 1) ||
      tokenMatcher(next, Times) ||
      (k > 1 && (this.isDash(k - 1) || tokenMatcher(this.LA(k - 1), Times)))
    );
  }

  private isDash(k: number): boolean {
    return tokenMatcher(this.LA(k), Dash) || tokenMatcher(this.LA(k), To);
  }

  private gluedTo(k: number): boolean {
    return glued(this.LA(k - 1), this.LA(k));
  }

  readonly line = this.RULE('line', (): Atom[] => {
    const atoms: Atom[] = [];
    this.MANY(() => {
      const atom = this.SUBRULE(this.atom);
      this.ACTION(() => atoms.push(atom));
    });
    return atoms;
  });

  private readonly atom = this.RULE(
    'atom',
    (): Atom =>
      this.OR({
        DEF: [
          {
            GATE: () => this.isDash(1) && this.leads && this.startsValue(2),
            ALT: () => this.SUBRULE(this.openInterval),
          },
          { GATE: () => this.startsMoment(1), ALT: () => this.SUBRULE(this.momentOrPeriod) },
          { GATE: () => this.startsValue(1), ALT: () => this.SUBRULE(this.measured) },
          { ALT: () => this.SUBRULE(this.loose) },
        ],
        IGNORE_AMBIGUITIES: true,
      }),
  );

  /** True until a value has been read: only a line's first depth may begin with a dash. */
  private leads = true;

  private startsMoment(k: number): boolean {
    const at = tokenMatcher(this.LA(k), Tilde) ? k + 1 : k;
    return tokenMatcher(this.LA(at), DateFigure) || tokenMatcher(this.LA(at), Clock);
  }

  private readonly openInterval = this.RULE('openInterval', (): Atom => {
    const dash = this.OR([{ ALT: () => this.CONSUME(Dash) }, { ALT: () => this.CONSUME(To) }]);
    let to = this.SUBRULE(this.quantity);
    this.OPTION2({
      GATE: () => this.joinsInches(to),
      DEF: () => {
        const inches = this.SUBRULE3(this.quantity);
        this.ACTION(() => {
          to = joinFeetAndInches(to, inches);
        });
      },
    });
    let second: Quantity | null = null;
    this.OPTION({
      GATE: () => this.isDash(1) && this.startsValue(2),
      DEF: () => {
        this.OR2([{ ALT: () => this.CONSUME2(Dash) }, { ALT: () => this.CONSUME2(To) }]);
        second = this.SUBRULE2(this.quantity);
      },
    });
    return this.ACTION(() => {
      this.leads = false;
      const at = { start: dash.startOffset, end: endOf(dash) };
      if (second) return signedDepth(at.start, to, second);
      return { kind: 'interval', from: null, to, dash: at, start: at.start, end: to.end } satisfies Interval;
    });
  });

  private readonly measured = this.RULE('measured', (): Atom => {
    const first = this.SUBRULE(this.quantity);
    let atom: Atom = first;
    this.OPTION({
      GATE: () => this.joinsInches(first),
      DEF: () => {
        const inches = this.SUBRULE2(this.quantity);
        this.ACTION(() => {
          atom = joinFeetAndInches(first, inches);
        });
      },
    });
    this.OPTION2({
      GATE: () => this.isDash(1) && this.startsValue(2),
      DEF: () => {
        const dash = this.OR([{ ALT: () => this.CONSUME(Dash) }, { ALT: () => this.CONSUME(To) }]);
        let to = this.SUBRULE3(this.quantity);
        this.OPTION3({
          GATE: () => this.joinsInches(to),
          DEF: () => {
            const inches = this.SUBRULE4(this.quantity);
            this.ACTION(() => {
              to = joinFeetAndInches(to, inches);
            });
          },
        });
        this.ACTION(() => {
          atom = intervalOrRange(atom as Quantity, dash, to);
        });
      },
    });
    this.OPTION4({
      GATE: () => tokenMatcher(this.LA(1), Times) && this.startsValue(2) && atom.kind === 'quantity',
      DEF: () => {
        this.CONSUME(Times);
        const second = this.SUBRULE5(this.quantity);
        let counted: IToken | null = null;
        this.OPTION5(() => {
          counted = this.CONSUME(UnitWord);
        });
        this.ACTION(() => {
          atom = product(atom as Quantity, second, counted);
        });
      },
    });
    this.ACTION(() => {
      this.leads = false;
    });
    return atom;
  });

  private joinsInches(feet: Quantity): boolean {
    if (feet.unit?.id !== 'ft' || feet.form !== 'plain' || feet.unitAt === null) return false;
    const unit = this.LA(2);
    return tokenMatcher(this.LA(1), Figure) && tokenMatcher(unit, UnitWord) && unitOf(unit)?.id === 'in';
  }

  private readonly quantity = this.RULE('quantity', (): Quantity => {
    const first = this.LA(1);
    const marks: Marks = {
      start: first.startOffset,
      end: 0,
      approximate: false,
      doubtful: false,
      bound: null,
      plus: false,
    };
    this.MANY(() =>
      this.OR([
        {
          ALT: () => {
            this.CONSUME(Tilde);
            marks.approximate = true;
          },
        },
        {
          ALT: () => {
            const bound = this.CONSUME(Bound);
            marks.bound = bound.image === '<' ? '<' : '>';
          },
        },
        {
          ALT: () => {
            this.CONSUME(Plus);
            marks.plus = true;
          },
        },
      ]),
    );
    const figure = this.OR2([
      { ALT: () => this.CONSUME(Figure) },
      { ALT: () => this.CONSUME(Doubt) },
      { ALT: () => this.CONSUME(Bottom) },
    ]);
    marks.end = endOf(figure);
    this.OPTION({ GATE: () => this.gluedTo(1), DEF: () => (marks.end = this.takeDoubt(this.CONSUME2(Doubt), marks)) });
    this.OPTION2({
      GATE: () => this.gluedTo(1) && !tokenMatcher(this.LA(2), Figure) && !this.nextIsGluedWord(),
      DEF: () => {
        marks.end = endOf(this.CONSUME2(Plus));
        marks.bound = '>';
      },
    });
    let unit: IToken | null = null;
    this.OPTION3({
      GATE: () => tokenMatcher(this.LA(1), UnitWord) || this.gluedTo(1),
      DEF: () => {
        unit = this.OR3([{ ALT: () => this.CONSUME(UnitWord) }, { ALT: () => this.CONSUME(InchMark) }]);
        marks.end = endOf(unit);
        this.OPTION4({
          GATE: () => this.gluedTo(1),
          DEF: () => {
            marks.end = this.takeDoubt(this.CONSUME3(Doubt), marks);
          },
        });
      },
    });
    return this.ACTION(() => quantity(marks, figure, unit));
  });

  private nextIsGluedWord(): boolean {
    return tokenMatcher(this.LA(2), Word) && glued(this.LA(1), this.LA(2));
  }

  private takeDoubt(doubt: IToken, marks: Marks): number {
    marks.doubtful = true;
    return endOf(doubt);
  }

  private readonly momentOrPeriod = this.RULE('momentOrPeriod', (): Atom => {
    const from = this.SUBRULE(this.moment);
    let atom: Atom = from;
    this.OPTION({
      GATE: () => this.isDash(1) && this.startsMoment(2),
      DEF: () => {
        this.OR([{ ALT: () => this.CONSUME(Dash) }, { ALT: () => this.CONSUME(To) }]);
        const to = this.SUBRULE2(this.moment);
        this.ACTION(() => {
          atom = period(from, to);
        });
      },
    });
    this.ACTION(() => {
      this.leads = false;
    });
    return atom;
  });

  private readonly moment = this.RULE('moment', (): Moment | Bad => {
    let date: IToken | null = null;
    let time: IToken | null = null;
    let doubt: IToken | null = null;
    let approximate = false;
    this.OPTION(() => {
      this.CONSUME(Tilde);
      approximate = true;
    });
    this.OR([
      {
        ALT: () => {
          date = this.CONSUME(DateFigure);
          this.OPTION2(() => {
            time = this.CONSUME(Clock);
          });
        },
      },
      {
        ALT: () => {
          time = this.CONSUME2(Clock);
        },
      },
    ]);
    this.OPTION3({
      GATE: () => this.gluedTo(1),
      DEF: () => {
        doubt = this.CONSUME(Doubt);
      },
    });
    return this.ACTION(() => moment(date, time, approximate, doubt));
  });

  private readonly loose = this.RULE('loose', (): Atom => {
    const token = this.CONSUME(Loose);
    return this.ACTION(() => looseAtom(token));
  });

  /**
   * The atoms of a line's tokens, its remark and comment taken off before. Words and commas need no rule: the rules
   * read the stretches between them, each with the word behind it, since none looks further.
   */
  read(input: IToken[]): Atom[] {
    const atoms: Atom[] = [];
    this.leads = true;
    for (let at = 0; at < input.length; ) {
      const token = input[at];
      if (token === undefined) break;
      if (standsAlone(token)) {
        atoms.push(token.tokenType === Comma ? commaAtom(token) : wordAtom(token));
        at += 1;
        continue;
      }
      const plain = this.leads ? plainInterval(input, at) : null;
      if (plain !== null) {
        atoms.push(plain);
        this.leads = false;
        at += plain.from === null ? 2 : 3;
        continue;
      }
      const end = stretchEnd(input, at);
      const read = this.readStretch(input.slice(at, end));
      if (read === null) return [unreadable(input)];
      atoms.push(...read);
      at = end;
    }
    return atoms;
  }

  private readStretch(input: IToken[]): Atom[] | null {
    this.input = input;
    const atoms = this.line() as Atom[] | undefined;
    return atoms && this.errors.length === 0 ? atoms : null;
  }
}

const plainQuantity = (figure: IToken): Quantity =>
  quantity(
    { start: figure.startOffset, end: endOf(figure), approximate: false, doubtful: false, bound: null, plus: false },
    figure,
    null,
  );

/** `0.3 - 3.8` or `- 3.8` in plain figures before a word, as most depths are; anything else is for the rules. */
function plainInterval(input: readonly IToken[], at: number): Interval | null {
  const open = input[at]?.tokenType === Dash;
  const [dash, figure, behind] = open
    ? [input[at], input[at + 1], input[at + 2]]
    : [input[at + 1], input[at + 2], input[at + 3]];
  if (dash?.tokenType !== Dash || figure?.tokenType !== PlainFigure) return null;
  if (behind !== undefined && !standsAlone(behind)) return null;
  const first = input[at];
  if (first === undefined || (!open && first.tokenType !== PlainFigure)) return null;
  const from = open ? null : plainQuantity(first);
  const to = plainQuantity(figure);
  const dashAt = { start: dash.startOffset, end: endOf(dash) };
  return { kind: 'interval', from, to, dash: dashAt, start: first.startOffset, end: to.end };
}

/** Behind the first word or comma from here on. */
function stretchEnd(input: readonly IToken[], from: number): number {
  for (let at = from; at < input.length; at += 1) {
    const token = input[at];
    if (token !== undefined && standsAlone(token)) return at + 1;
  }
  return input.length;
}

/** Every token fits somewhere, so that this is for a mistake of the grammar's own: the line is said to be unreadable. */
function unreadable(input: readonly IToken[]): Bad {
  const [first, last] = [input[0], input[input.length - 1]];
  const at = { start: first?.startOffset ?? 0, end: last ? endOf(last) : 0 };
  return { kind: 'bad', ...at, problem: problem('unreadable', at, first?.image ?? '') };
}

/** `-1 - 10`: a depth has no minus; above ground is `+`. */
function signedDepth(start: number, from: Quantity, to: Quantity): Bad {
  const at = { start, end: to.end };
  const [top, bottom] = [from.figure, to.figure];
  return {
    kind: 'bad',
    ...at,
    problem: problem('unexpected-depth', at, `-${top} - ${bottom}`, [`+${top} - ${bottom}`, `${top} - ${bottom}`], {
      wanted: 'sign',
    }),
  };
}

function product(first: Quantity, second: Quantity, counted: IToken | null): Product {
  const unit = counted ? unitOf(counted) : null;
  return {
    kind: 'product',
    factors: [first, second],
    counted: unit,
    start: first.start,
    end: counted ? endOf(counted) : second.end,
  };
}

function period(from: Moment | Bad, to: Moment | Bad): Period | Bad {
  if (from.kind === 'bad') return from;
  if (to.kind === 'bad') return to;
  const whole = to.date === null && from.date !== null ? { ...to, date: from.date } : to;
  return { kind: 'period', from, to: whole, start: from.start, end: to.end };
}

let parser: LineParser | null = null;

/** Reads the tokens of a line into atoms. Never throws: a token that fits nowhere is an atom of its own. */
export function parseAtoms(input: IToken[]): Atom[] {
  parser ??= new LineParser();
  const atoms = withoutGluedWords(parser.read(input));
  return input.some(isTooLong) ? atoms.map((atom) => tooLong(atom, input)) : atoms;
}

const isMeasured = (atom: Atom | undefined): atom is Quantity | Interval | Product =>
  atom?.kind === 'quantity' || atom?.kind === 'interval' || atom?.kind === 'product';

/** `1e400` and `38x`: a number that runs into a word which is no unit is no number. */
function withoutGluedWords(atoms: Atom[]): Atom[] {
  if (
    !atoms.some(
      (atom, k) => atom.kind === 'word' && k > 0 && isMeasured(atoms[k - 1]) && atoms[k - 1]?.end === atom.start,
    )
  )
    return atoms;
  const out: Atom[] = [];
  for (const atom of atoms) {
    const before = out[out.length - 1];
    if (atom.kind === 'word' && isMeasured(before) && before.end === atom.start) {
      const at = { start: atom.start, end: atom.end };
      out[out.length - 1] = {
        kind: 'bad',
        start: before.start,
        end: atom.end,
        problem: problem('unknown-unit', at, atom.text),
      };
    } else out.push(atom);
  }
  return out;
}

function tooLong(atom: Atom, input: readonly IToken[]): Atom {
  const long = input.find(
    (t) => t.startOffset >= atom.start && endOf(t) <= atom.end && tokenMatcher(t, Figure) && isTooLong(t),
  );
  if (!long) return atom;
  const at = { start: long.startOffset, end: endOf(long) };
  return { kind: 'bad', ...at, problem: problem('unreadable', at, long.image) };
}
