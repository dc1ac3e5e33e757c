import * as l10n from '@vscode/l10n';
import { clausesOf, type Kind, speaksOfWork } from './clauses.ts';
import { isGround, remarkOf } from './describe.ts';
import { both, type Draft, type DraftItem, line, nothing, type Outcome } from './draft.ts';
import { lengthText } from './lengths.ts';
import type { ReadOptions } from './notes.ts';
import { intervalOf, lengthsOf, notTaken, type Statement, statementOf } from './statement.ts';
import { casingSet, casingShoe, type StringSoFar } from './statements/casing.ts';
import { abandoned, annulusFill, wellScreen } from './statements/fill.ts';
import { headFact } from './statements/head.ts';
import { holeDrilled, totalDepth } from './statements/hole.ts';
import { groundLayer } from './statements/layer.ts';
import { reading, yieldTest } from './statements/test.ts';
import { lostReturns, staticLevel, waterFound } from './statements/water.ts';
import { developed, disinfected, hydrofractured, pumpSet } from './statements/work.ts';
import type { Interval } from './tokens.ts';
import { tidy } from './typography.ts';
import { tellsUnits } from './units-told.ts';

/** What lines further up have opened. */
interface Open {
  string: StringSoFar | null;
  hole: string | null;
  test: boolean;
}

const longest = 2000;

const notRead = (why: string): Outcome => ({ ...nothing, why: [why] });

const noPlace = (): string => l10n.t('the notation has no line for it that could be told from these words');

function readStatement(kind: Kind | null, statement: Statement, open: Open): Outcome {
  switch (kind) {
    case 'water':
      return waterFound(statement, null);
    case 'level':
      return staticLevel(statement);
    case 'casing': {
      const { string, ...outcome } = casingSet(statement);
      open.string = string;
      return outcome;
    }
    case 'shoe':
      return casingShoe(statement, open.string);
    case 'fill':
    case 'bags':
      return annulusFill(statement);
    case 'abandonment':
      return abandoned(statement);
    case 'screen':
      return wellScreen(statement);
    case 'hole': {
      const { bottom, ...outcome } = holeDrilled(statement, open.hole);
      open.hole = bottom;
      return outcome;
    }
    case 'total-depth':
      return totalDepth(statement);
    case 'test':
      open.test = true;
      return yieldTest(statement);
    case 'drawdown':
      return drawdownAlone(statement, open);
    case 'pump':
      return pumpSet(statement);
    case 'disinfection':
      return disinfected(statement);
    case 'development':
      return developed(statement);
    case 'hydrofracture':
      return hydrofractured(statement);
    case 'lost':
      return lostReturns(statement);
    case 'dry':
      return { ...nothing, items: [line('head', 'status dry')] };
    case 'layer':
      return groundLayer(statement, isGround) ?? notRead(noPlace());
    case null:
      return notRead(noPlace());
  }
}

function drawdownAlone(statement: Statement, open: Open): Outcome {
  const [length] = lengthsOf(statement);
  if (!open.test || length === undefined) return notRead(l10n.t('no test stands above this drawdown'));
  const isDrawdown = !/\bto\b|level/i.test(statement.text);
  return {
    ...nothing,
    items: [line('test', `? ${isDrawdown ? 'dd ' : ''}${lengthText(length)}`)],
    why: [l10n.t('when the level was read is not told')],
    depths: [length],
  };
}

/** A line that is one layer, its depths at its end: `gravel, water 52 - 57`. */
function layerWithDepthsLast(text: string, options: ReadOptions): Outcome | null {
  if (speaksOfWork.test(text)) return null;
  const statement = statementOf(text, options.dates);
  const [first] = statement.tokens;
  if (statement.tokens.length !== 1 || first?.kind !== 'interval' || first.start === 0) return null;
  if (!/^[)\].]*$/.test(text.slice(first.end).trim())) return null;
  const words = text
    .slice(0, first.start)
    .replace(/\b(?:from|at)? ?[([]?$/i, '')
    .trim();
  const [head = ''] = words.split(',');
  if (!isGround(head)) return null;
  return groundLayer(statement, isGround);
}

const figuresIn = (text: string): string[] =>
  [...text.matchAll(/\d+(?:\.\d+)?|(?<!\d)\.\d+/g)].map(([each]) => String(Number(each)));

const writtenBy = (item: DraftItem): string => {
  if (item.kind === 'line') return typeof item.text === 'string' ? item.text : item.text(null);
  if (item.kind === 'total') return item.depth.figure;
  return [item.from?.figure, item.to?.figure, item.words, item.remark].join(' ');
};

/** Tells of figures that came into no line, whatever the reader of the statement made of them. */
function withLostFigures({ text, tokens }: Statement, outcome: Outcome): Outcome {
  if (outcome.items.length === 0) return outcome;
  const dates = tokens.filter(({ kind }) => kind === 'date' || kind === 'open-date');
  const undated = dates.reduce(
    (left, { start, end }) => left.slice(0, start) + ' '.repeat(end - start) + left.slice(end),
    text,
  );
  const written = new Set(figuresIn([...outcome.items.map(writtenBy), ...outcome.why].join(' ')));
  const lost = [...new Set(figuresIn(undated))].filter((figure) => !written.has(figure));
  return { ...outcome, why: [...outcome.why, ...notTaken(lost)] };
}

/** What lies within a layer of the same line (`frac @ 88`) is its remark; null where no layer stands before it. */
function asRemark(all: Outcome, clause: string): Outcome | null {
  const layer = all.items.at(-1);
  if (layer?.kind !== 'layer') return null;
  const remark = layer.remark === null ? remarkOf(clause) : `${layer.remark}, ${remarkOf(clause)}`;
  return { ...all, items: [...all.items.slice(0, -1), { ...layer, remark }] };
}

function readTidied(text: string, open: Open, options: ReadOptions): Outcome {
  const told = tellsUnits(text);
  if (told !== null) return nothing;
  const head = headFact(text, options);
  if (head !== null) return head;
  if (open.test) {
    const read = reading(text);
    if (read !== null) return { ...nothing, items: [line('test', read)] };
  }
  const last = layerWithDepthsLast(text, options);
  if (last !== null) return last;
  let layer: Interval | null = null;
  return clausesOf(text, options.dates)
    .map(({ kind, text: clause }) => {
      const statement = statementOf(clause, options.dates);
      if (kind === 'layer') layer = intervalOf(statement) ?? layer;
      const outcome = kind === 'water' ? waterFound(statement, layer) : readStatement(kind, statement, open);
      return { clause, kind, outcome: withLostFigures(statement, outcome) };
    })
    .reduce(
      (all, { clause, kind, outcome }) =>
        (kind === 'layer' && outcome.items.length === 0 ? asRemark(all, clause) : null) ?? both(all, outcome),
      nothing,
    );
}

/** Notes in plain text, one draft a line that is not blank. `first` is the number of the first line. */
export function readPlain(lines: readonly string[], first: number, options: ReadOptions): Draft[] {
  const open: Open = { string: null, hole: null, test: false };
  return lines.flatMap((source, at): Draft[] => {
    const text = tidy(source);
    if (text === '')
      return source.trim() === '' ? [] : [{ ...nothing, first: first + at, last: first + at, source: [source] }];
    const outcome =
      text.length > longest ? notRead(l10n.t('longer than {0} characters', longest)) : readTidied(text, open, options);
    return [{ ...outcome, first: first + at, last: first + at, source: [source] }];
  });
}
