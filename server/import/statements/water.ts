import * as l10n from '@vscode/l10n';
import { type DraftItem, line, type Outcome } from '../draft.ts';
import { type Length, lengthText } from '../lengths.ts';
import { after, intervalOf, lengthsOf, notTaken, type Statement, termsIn, textsOf, wordsOf } from '../statement.ts';
import { type Interval, intervalText } from '../tokens.ts';

const ignored =
  /^(?:wtr|water|groundwater|ground|waters|h2o|wb|w\.b\.|found|hit|struck|encountered|bearing|made|making|makes|giving|gave|gives|main|more|then|first|second|total|about|got|zone|strike|inflow|flow|each|produced|production|estimated|est)\.?$/i;

/**
 * `38 fresh, 5 gpm` for each depth; rates go with the depths one to one, a single rate with the last. Water of a `layer` on
 * the same line that has no depth of its own has the layer's.
 */
export function waterFound(statement: Statement, layer: Interval | null): Outcome {
  const words = wordsOf(statement);
  const { terms, left } = termsIn(words, ['water-kind'], ignored);
  const kind = terms.map(({ name }) => name);
  const rates = textsOf(statement, 'rate');
  const total = /\btotal\b/i.test(words) ? 'total ' : '';
  const lengths = lengthsOf(statement);
  const interval = intervalOf(statement) ?? (lengths.length === 0 ? layer : null);
  const depths = interval ? [intervalText(interval)] : lengths.map((each) => lengthText(each));
  if (depths.length === 0) depths.push('?');
  const rateOf = (at: number): string | undefined =>
    rates.length === depths.length ? rates[at] : at === depths.length - 1 ? rates[0] : undefined;
  const items: DraftItem[] = depths.map((depth, at) => {
    const rate = rateOf(at);
    const said = [...kind, ...(rate === undefined ? [] : [`${total}${rate}`])];
    return line('water', said.length === 0 ? `${depth}${depth === '?' ? ' ?' : ''}` : `${depth}, ${said.join(', ')}`);
  });
  const unclear = rates.length > 1 && rates.length !== depths.length;
  const shared = rates.length === 1 && depths.length > 1;
  const why = [
    ...(depths[0] === '?' ? [l10n.t('the depth of the water is not told')] : []),
    ...(unclear ? [l10n.t('which rate belongs to which depth is not told')] : []),
    ...(shared ? [l10n.t('one rate stands with several depths; it was put with the last')] : []),
    ...notTaken(left),
  ];
  const used = interval ? [interval.from, interval.to] : lengths;
  return { items, why, depths: used, openDate: null };
}

const levelIgnored =
  /^(?:swl|s\.w\.l\.|static|water|wtr|level|lvl|rose|rises|came|up|groundwater|to|wl|w\.l\.|dtw|rwl|standing|stands|stood|rest|rests|below|under|ground|grade|surface|top|casing|csg|toc|btoc|t\.o\.c\.|bgs|bgl|bg|from|measured|depth|land|above|gl|date|after)\.?:?$/i;

const datumOf = (text: string): string => {
  if (/\b(?:toc|t\.o\.c\.|btoc)(?!\w)|top of (?:the )?(?:casing|csg|pipe)/i.test(text)) return ' toc';
  return /\b(?:bgs|bgl|below (?:the )?(?:ground|grade|land surface|surface))\b/i.test(text) ? ' bgs' : '';
};

const isAbove = (statement: Statement, length: Length): boolean =>
  /^ ?(?:above|over)\b/i.test(after(statement, length)) && !/top of/i.test(after(statement, length));

/** `level 17 2026-05-06`; without a figure `level ?`. */
export function staticLevel(statement: Statement): Outcome {
  const [length, second] = lengthsOf(statement);
  const [date] = textsOf(statement, 'date');
  const [open] = textsOf(statement, 'open-date');
  const { left } = termsIn(wordsOf(statement), [], levelIgnored);
  const depth =
    length === undefined ? '?' : lengthText(isAbove(statement, length) ? { ...length, plus: true } : length);
  const text = ['level', `${depth}${datumOf(statement.text)}`, ...(date === undefined ? [] : [date])].join(' ');
  const why = [
    ...(length === undefined ? [l10n.t('the level is not told')] : []),
    ...(second === undefined ? [] : [l10n.t('two figures for one level; the first was taken')]),
    ...(open === undefined ? [] : [l10n.t('"{0}" could be two days, and was left away', open)]),
    ...notTaken([...left, ...textsOf(statement, 'time', 'rate')]),
  ];
  return { items: [line('water', text)], why, depths: length === undefined ? [] : [length], openDate: open ?? null };
}

/** `lost 51 - 53` */
export function lostReturns(statement: Statement): Outcome {
  const interval = intervalOf(statement);
  const [length] = lengthsOf(statement);
  const { terms, left } = termsIn(
    wordsOf(statement),
    ['extent'],
    /^(?:lost|loss|losing|circ|circulation|returns?|water|fluid|mud|air|of|all)\.?$/i,
  );
  const depth = interval ? intervalText(interval) : length ? lengthText(length) : '?';
  const text = ['lost', depth, ...terms.map(({ name }) => name)].join(' ');
  const why = [...(depth === '?' ? [l10n.t('the depth is not told')] : []), ...notTaken(left)];
  const used = interval ? [interval.from, interval.to] : length ? [length] : [];
  return { items: [line('drilling', text)], why, depths: used, openDate: null };
}
