import * as l10n from '@vscode/l10n';
import { type DraftItem, line, type Outcome } from '../draft.ts';
import { lengthText } from '../lengths.ts';
import { before, intervalOf, lengthsOf, notTaken, type Statement, termsIn, textsOf, wordsOf } from '../statement.ts';

const ignored =
  /^(?:test|tested|pump|pumped|pumping|pumps|yield|yields|yielded|flow|water|rate|well|drawdown|drew|down|dd|to|level|lvl|drawn|w|blew|rig|stem|intake|after)\.?:?$/i;

const methods: readonly (readonly [RegExp, string])[] = [
  [/\bbail/i, 'bail'],
  [/\bbl[eo]w|\bair/i, 'blow'],
  [/\bpump/i, 'pump'],
];

const methodOf = (text: string): string => methods.find(([form]) => form.test(text))?.[1] ?? '?';

const drawdownWord = /\b(?:dd|drawdown|drew down|drawn down|draw down)\b/i;

/** `test pump 10 gpm, 2 h` and the level at its end. */
export function yieldTest(statement: Statement): Outcome {
  const { text } = statement;
  const [rate] = textsOf(statement, 'rate');
  const [time] = textsOf(statement, 'time');
  const [date] = textsOf(statement, 'date');
  const interval = intervalOf(statement);
  const lengths = lengthsOf(statement);
  const intake = lengths.find((each) => /\b(?:intake|stem|pump set|from)(?: at)? $/i.test(before(statement, each)));
  const level = interval?.to ?? lengths.find((each) => each !== intake);
  const method = methodOf(text);
  const said = [
    ...(rate === undefined ? [] : [rate]),
    ...(intake ? [`${/\bstem/i.test(text) ? 'stem' : 'intake'} ${lengthText(intake)}`] : []),
    ...(time === undefined ? [] : [time]),
    ...(date === undefined ? [] : [date]),
  ];
  const items: DraftItem[] = [line('test', `test ${method} ${said.join(', ')}`.trim())];
  const reached = level ? endOf(statement, time, lengthText(level)) : null;
  if (reached !== null) items.push(line('test', reached));
  const { left } = termsIn(wordsOf(statement), ['test-method'], ignored);
  const why = [
    ...(method === '?' ? [l10n.t('how the yield was found is not told')] : []),
    ...(reached !== null && time === undefined ? [l10n.t('when the level was read is not told')] : []),
    ...notTaken([...left, ...(interval ? [lengthText(interval.from)] : [])]),
  ];
  return { items, why, depths: level ? [level] : [], openDate: null };
}

function endOf(statement: Statement, time: string | undefined, level: string): string {
  const isDrawdown =
    drawdownWord.test(statement.text) && !/\b(?:to|level) (?:of )?[~+]?\d|pumping level/i.test(statement.text);
  return `${time ?? '?'} ${isDrawdown ? 'dd ' : ''}${level}`;
}

const readingForm =
  /^(?:at |after )?(?<count>\d+(?:\.\d+)?)(?: ?(?<unit>s|secs?|min|mins?|minutes?|m|hrs?|hours?|h))?(?:\.?[ :,;=]+|\.? - )(?:level |wl |dd )?(?<level>\d+(?:\.\d+)?(?: ?(?:'|ft|m))?)$/i;

const timeUnit = (unit: string | undefined): string => {
  if (unit === undefined) return '';
  return /^s/i.test(unit) ? ' s' : /^h/i.test(unit) ? ' h' : ' min';
};

/** A line of a test that is open: elapsed time and level. Null where it is none. */
export function reading(text: string): string | null {
  const { count, unit, level } = readingForm.exec(text)?.groups ?? {};
  if (count === undefined || level === undefined) return null;
  return `${count}${timeUnit(unit)} ${level}`;
}
