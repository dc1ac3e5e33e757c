import * as l10n from '@vscode/l10n';
import type { DrilledInterval, Drilling } from '../../model/log.ts';
import { figureValues } from '../figure-values.ts';
import { intervalText, valueText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

interface Drilled {
  readonly drilling: Drilling;
  readonly drilled: DrilledInterval;
}

const drilledIn = ({ log }: RuleContext): Drilled[] =>
  log.drilling.flatMap((drilling) => drilling.intervals.map((drilled) => ({ drilling, drilled })));

const reportOf = ({ drilling, drilled }: Drilled, spare: number, { log }: RuleContext): Report => ({
  span: drilled.interval.span,
  doubts: [drilled.pressure ?? drilling.pressure, drilled.interval.bottom],
  message: l10n.t(
    'the water above {0} weighs {1} more than the compressor can push against: with that pressure the hole could not have been blown clear; correct the pressure or the level, or note how the water was lifted',
    intervalText(drilled.interval, log.units),
    valueText(-spare, 'kPa'),
  ),
});

/** Air whose pressure cannot lift the water that stood in the hole. */
export const rule: Rule = {
  id: 'air-cannot-lift',
  severity: 'information',
  title: 'Air that cannot lift the water in the hole',
  why: 'Below a certain depth of water a compressor can no longer blow the hole clear: either a figure is wrong, or something else was done.',
  mend: 'Correct the pressure or the static level, or note the stages or the booster that was used. Air under pressure hurts: follow the maker and licensed practice.',
  source: 'the record’s figure for the pressure to spare',
  crew: 'What pressure did the compressor give, and how was the water lifted?',
  flagged: [
    {
      text: 'hole\n  0 - 200 152\ndrilling air 21 m3/min 700 kPa, pipe 114\n  [[180 - 186]] 18 min air\nwater\n  level 5 2026-05-07',
      fixed:
        'hole\n  0 - 200 152\ndrilling air 21 m3/min 700? kPa, pipe 114\n  180 - 186 18 min air\nwater\n  level 5 2026-05-07',
    },
  ],
  silent: [
    {
      text: 'hole\n  0 - 200 152\ndrilling air 21 m3/min 2400 kPa, pipe 114\n  180 - 186 18 min air\nwater\n  level 5 2026-05-07',
    },
    { text: 'hole\n  0 - 200 152\ndrilling air 21 m3/min 700 kPa, pipe 114\n  180 - 186 18 min air' },
  ],
  check: (context) => {
    const drilled = drilledIn(context);
    if (drilled.length === 0) return [];
    const values = figureValues(context);
    return drilled.flatMap((each, index) => {
      const spare = values.get(`drilling.${index + 1}.spare-pressure`) ?? null;
      return spare !== null && spare < 0 ? [reportOf(each, spare, context)] : [];
    });
  },
};
