import * as l10n from '@vscode/l10n';
import type { Depth, Fill, Interval, PipeString, WellLog } from '../../model/log.ts';
import { type ColumnName, columnText, type Entry, sameDepth } from '../columns.ts';
import { depthAs, fix } from '../fixes.ts';
import { depthText } from '../messages.ts';
import type { Fix, Report, Rule } from '../rule.ts';
import { kindText } from '../strings.ts';

interface Reaching {
  /** What it is, in a sentence. */
  readonly what: () => string;
  readonly line: number;
  readonly bottom: Depth | null;
}

const reaching = (what: () => string, line: number, interval: Interval | null): Reaching => ({
  what,
  line,
  bottom: interval?.bottom ?? null,
});

const isBelow = ({ bottom }: { readonly bottom: Depth | null }, foot: number): boolean =>
  (bottom?.value ?? Number.NEGATIVE_INFINITY) > foot + sameDepth;

/** The first line of a column that goes below the foot of the hole: those under it go with it. */
function firstBelow(column: ColumnName, entries: readonly Entry[], foot: number): Reaching[] {
  const first = entries.find(({ interval }) => isBelow(interval, foot));
  return first ? [reaching(() => columnText(column), first.line, first.interval)] : [];
}

const ofKind = (kind: PipeString['kind'] | Fill['kind'], line: number, interval: Interval | null): Reaching =>
  reaching(() => kindText({ kind }), line, interval);

const ofString = (string: PipeString): Reaching[] => [
  ofKind(string.kind, string.line, string.interval),
  ...string.screens
    .filter(({ line }) => line !== string.line)
    .map((each) => ofKind('screen', each.line, each.interval)),
  ...string.fills.map((each) => ofKind(each.kind, each.line, each.interval)),
];

const goingBelow = (log: WellLog, foot: number): Reaching[] => [
  ...firstBelow('strata', log.strata, foot),
  ...firstBelow(
    'drilling',
    log.drilling.flatMap((each) => each.intervals),
    foot,
  ),
  ...[
    ...log.strings.flatMap(ofString),
    ...log.hydrofractures.map(({ line, interval }) => reaching(() => l10n.t('hydrofracture'), line, interval)),
    ...log.abandonments.flatMap((each) =>
      each.fills.map((fill) => reaching(() => l10n.t('fill'), fill.line, fill.interval)),
    ),
  ].filter((each) => isBelow(each, foot)),
];

const deepestHole = ({ hole }: WellLog): Depth | null =>
  hole.reduce<Depth | null>((deepest, { interval: { bottom } }) => {
    return (bottom?.value ?? Number.NEGATIVE_INFINITY) > (deepest?.value ?? Number.NEGATIVE_INFINITY)
      ? bottom
      : deepest;
  }, null);

function fixesOf({ line, bottom }: Reaching, foot: Depth): Fix[] {
  if (bottom?.value === null || bottom?.value === undefined || foot.value === null || bottom.span.line !== line)
    return [];
  return [
    fix(l10n.t('End it at the bottom of the hole'), [{ span: bottom.span, text: depthAs(bottom, foot.value) }]),
    fix(l10n.t('Take the hole down to it'), [{ span: foot.span, text: depthAs(foot, bottom.value) }]),
  ];
}

function reportOf(each: Reaching, bottom: Depth, foot: Depth, { units }: WellLog): Report {
  const end = depthText(foot.value ?? 0, units);
  return {
    span: bottom.span,
    doubts: [bottom, foot],
    message: l10n.t(
      '{0} reaches {1}, but the hole ends at {2}; correct this depth, or log the hole down to it',
      each.what(),
      depthText(bottom.value ?? 0, units),
      end,
    ),
    related: [{ span: foot.span, message: l10n.t('the hole ends here, at {0}', end) }],
    fixes: () => fixesOf(each, foot),
  };
}

/** Strata, strings or fills that reach deeper than the hole was logged. */
export const rule: Rule = {
  id: 'beyond-the-bottom',
  severity: 'error',
  title: 'Something that reaches deeper than the hole',
  why: 'Nothing can stand or be seen below the bottom of the hole: one of the two depths is wrong.',
  mend: 'Correct the depth, or log the hole down to it.',
  source: 'geometry',
  crew: 'How deep is the hole, and how deep does this go?',
  flagged: [
    {
      text: 'hole\n  0 - 61 152\nstrata\n  0 - 6 clay\n  6 - [[62]] limestone',
      fixed: 'hole\n  0 - 61 152\nstrata\n  0 - 6 clay\n  6 - 61 limestone',
    },
    { text: 'hole\n  0 - 7.2 254\ncasing +0.45 - [[72]] steel 168.3 x 6.4' },
  ],
  silent: [
    { text: 'hole\n  0 - 61 152\nstrata\n  0 - 6 clay\n  6 - 61 limestone' },
    { text: 'strata\n  0 - 62 limestone' },
    { text: 'hole\n  0 - 200 ft 152\nstrata\n  0 - 60.96 limestone' },
  ],
  check: function* ({ log }) {
    const foot = deepestHole(log);
    if (foot?.value === null || foot?.value === undefined) return;
    for (const each of goingBelow(log, foot.value)) if (each.bottom) yield reportOf(each, each.bottom, foot, log);
  },
};
