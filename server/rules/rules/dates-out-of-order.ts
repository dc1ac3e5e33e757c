import * as l10n from '@vscode/l10n';
import type { Moment, WellLog } from '../../model/log.ts';
import type { Report, Rule } from '../rule.ts';
import { kindText } from '../strings.ts';

interface Dated {
  /** What is dated, in a sentence. */
  readonly what: () => string;
  readonly moment: Moment | null | undefined;
}

/** Work that belongs to the making of the well: not before it began, nor after it was finished. */
const workOf = (log: WellLog): Dated[] => [
  ...log.shifts.map(({ hours }) => ({ what: () => l10n.t('this shift'), moment: hours?.from })),
  ...log.hole.map(({ date }) => ({ what: () => l10n.t('this hole'), moment: date })),
  ...log.drilling.flatMap((each) =>
    each.intervals.map(({ when }) => ({ what: () => l10n.t('this drilling'), moment: when?.from })),
  ),
  ...log.strings.flatMap((string) => [
    { what: () => l10n.t('the setting of the {0}', kindText(string)), moment: string.set },
    ...string.fills.map((fill) => ({
      what: () => l10n.t('the {0}', kindText(fill)),
      moment: fill.placed?.from ?? fill.placed?.to,
    })),
    { what: () => l10n.t('the pulling of the {0}', kindText(string)), moment: string.pulled },
  ]),
];

/** What may also come after the well was finished. */
const laterOf = (log: WellLog): Dated[] => [
  ...log.strings.flatMap((string) => string.cuts.map(({ date }) => ({ what: () => l10n.t('this cut'), moment: date }))),
  ...log.water.found.map(({ date }) => ({ what: () => l10n.t('this water'), moment: date })),
  ...log.water.levels.map(({ date }) => ({ what: () => l10n.t('this level'), moment: date })),
  ...log.tests.map(({ start }) => ({ what: () => l10n.t('this test'), moment: start?.from })),
  ...log.disinfections.map(({ date }) => ({ what: () => l10n.t('the disinfection'), moment: date })),
  ...log.developments.map(({ date }) => ({ what: () => l10n.t('the development'), moment: date })),
  ...log.hydrofractures.map(({ date }) => ({ what: () => l10n.t('the fracturing'), moment: date })),
  ...log.pumps.map(({ date }) => ({ what: () => l10n.t('the fitting of the pump'), moment: date })),
  ...log.abandonments.map(({ date }) => ({ what: () => l10n.t('the abandonment'), moment: date })),
];

const dayOf = ({ moment }: Dated): string | null => (moment?.valid ? moment.date : null);

const isBefore = (a: Dated, b: Dated): boolean => {
  const [first, second] = [dayOf(a), dayOf(b)];
  return first !== null && second !== null && first < second;
};

type Words = (what: string, day: string, other: string) => string;

const beforeWork: Words = (...parts) =>
  l10n.t('{0} is dated {1}, before the work began, {2}; one of the two dates is wrong', ...parts);

const beforeFinish: Words = (...parts) =>
  l10n.t('{0} is dated {1}, before the well was finished, {2}; one of the two dates is wrong', ...parts);

const afterFinish: Words = (...parts) =>
  l10n.t('{0} is dated {1}, after the well was finished, {2}; one of the two dates is wrong', ...parts);

const reportOf = (wrong: Dated, other: Dated, words: Words): Report[] =>
  wrong.moment && other.moment
    ? [
        {
          span: wrong.moment.span,
          doubts: [wrong.moment, other.moment],
          message: words(wrong.what(), dayOf(wrong) ?? '', dayOf(other) ?? ''),
          related: [{ span: other.moment.span, message: `${other.what()}, ${dayOf(other)}` }],
        },
      ]
    : [];

const future = (dated: Dated, today: string | null): Report[] => {
  const day = dayOf(dated);
  if (today === null || day === null || day <= today || !dated.moment) return [];
  return [
    {
      span: dated.moment.span,
      doubts: [dated.moment],
      message: l10n.t('{0} is dated {1}, which is after today, {2}; correct the date', dated.what(), day, today),
    },
  ];
};

/** Dates of a log that cannot follow one another as written. */
export const rule: Rule = {
  id: 'dates-out-of-order',
  severity: 'error',
  title: 'Dates that run backwards, or lie in the future',
  why: 'Set time, due dates and the order of the work are reckoned from the dates of the log.',
  mend: 'Correct the date that is wrong; mark it `?` where nobody knows.',
  source: 'the calendar',
  crew: 'Which day was it?',
  flagged: [
    { text: 'began 2026-05-06\nfinished [[2026-05-04]]', fixed: 'began 2026-05-06\nfinished 2026-05-04?' },
    {
      text: 'began 2026-05-04\nfinished 2026-05-06\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 neat cement, 0.29 m3, [[2026-04-05]]',
    },
    { text: 'finished 2026-05-06\nreported [[2026-05-01]]' },
    { text: 'water\n  level 5.2 [[2027-05-07]]' },
  ],
  silent: [
    { text: 'began 2026-05-04\nfinished 2026-05-06\nreported 2026-05-20\nwater\n  level 5.2 2026-05-07' },
    { text: 'finished 2026-05-06\nabandonment 2026-06-01' },
  ],
  check: function* ({ log, today }) {
    const began: Dated = { what: () => l10n.t('the beginning'), moment: log.began };
    const finished: Dated = { what: () => l10n.t('the finish'), moment: log.finished };
    const reported: Dated = { what: () => l10n.t('the report'), moment: log.reported };
    const work = workOf(log);
    const later = laterOf(log);
    if (isBefore(finished, began)) yield* reportOf(finished, began, beforeWork);
    if (isBefore(reported, finished)) yield* reportOf(reported, finished, beforeFinish);
    for (const dated of [...work, ...later]) if (isBefore(dated, began)) yield* reportOf(dated, began, beforeWork);
    for (const dated of work) if (isBefore(finished, dated)) yield* reportOf(dated, finished, afterFinish);
    for (const dated of [began, finished, reported, ...work, ...later]) yield* future(dated, today);
  },
};
