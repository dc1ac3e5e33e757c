import * as l10n from '@vscode/l10n';
import type { DrilledInterval, Drilling } from '../../model/log.ts';
import { figureValues } from '../figure-values.ts';
import { limitText } from '../limit-text.ts';
import { intervalText, numberText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** Foam, and water in the air, lift cuttings at far lower velocities. */
const dry = new Set(['air', 'mist']);

interface Drilled {
  readonly drilling: Drilling;
  readonly interval: DrilledInterval;
  /** Place among the drilled intervals of the file, from 1. */
  readonly number: number;
}

const drilledIn = ({ log }: RuleContext): Drilled[] =>
  log.drilling
    .flatMap((drilling) => drilling.intervals.map((interval) => ({ drilling, interval })))
    .map((each, index) => ({ ...each, number: index + 1 }));

function isDry({ drilling, interval }: Drilled): boolean {
  const flush = interval.flush.length > 0 ? interval.flush : drilling.flush;
  return flush.length > 0 && flush.every(({ id }) => dry.has(id));
}

/** Metres a second, shown as the file has them: m/min, or ft/min in a file of feet. */
const velocityText = (velocity: number, { log: { units } }: RuleContext): string =>
  units.depth === 'ft' ? `${numberText((velocity / 0.3048) * 60, 3)} ft/min` : `${numberText(velocity * 60, 3)} m/min`;

const reportOf = ({ drilling, interval }: Drilled, velocity: number, context: RuleContext): Report => ({
  span: interval.interval.span,
  doubts: [drilling.airRate, drilling.pipe],
  message: l10n.t(
    'air comes up at {0} at the slowest place while {1} is drilled; at least {2} lifts the cuttings of dry air drilling, and up to {3} is recommended; a compressor may give {4}; check the air, the pipe and the diameters, or log the foam or the water that was used',
    velocityText(velocity, context),
    intervalText(interval.interval, context.log.units),
    limitText(context, 'uphole-velocity-least'),
    limitText(context, 'uphole-velocity-most'),
    limitText(context, 'air-rating-loss'),
  ),
  limit: 'uphole-velocity-least',
});

/** Dry air that comes up too slowly to lift the cuttings. */
export const rule: Rule = {
  id: 'uphole-velocity-low',
  severity: 'information',
  title: 'Air too slow to lift the cuttings',
  why: 'Cuttings that are not lifted are ground again or pack round the bit, and those that come up are mixed from several depths, so that contacts read from them are doubtful.',
  mend: 'Check the volume of air, the drill pipe and the diameters, or log the flush that was really used.',
  source: 'the pack’s limit; recommended ranges disagree between sources',
  crew: 'What air, pipe and bit were used, and was foam or water put in?',
  flagged: [
    {
      text: 'hole\n  0 - 61 254\ndrilling air 10 m3/min 1000 kPa, pipe 89\n  [[7.2 - 13.2]] 18 min air',
      fixed: 'hole\n  0 - 61 254\ndrilling air 10? m3/min 1000 kPa, pipe 89\n  7.2 - 13.2 18 min air',
    },
  ],
  silent: [
    { text: 'hole\n  0 - 61 152\ndrilling air 21 m3/min 2400 kPa, pipe 114\n  7.2 - 13.2 18 min air' },
    { text: 'hole\n  0 - 61 254\ndrilling air 10 m3/min 1000 kPa, pipe 89\n  7.2 - 13.2 18 min foam' },
    { text: 'hole\n  0 - 61 254\ndrilling air 10 m3/min\n  7.2 - 13.2 18 min air' },
  ],
  check: function* (context) {
    const least = context.limits['uphole-velocity-least'];
    const drilled = drilledIn(context).filter(isDry);
    if (!least || drilled.length === 0) return;
    const velocities = figureValues(context);
    for (const each of drilled) {
      const velocity = velocities.get(`drilling.${each.number}.uphole-velocity`) ?? null;
      if (velocity !== null && velocity < least.value) yield reportOf(each, velocity, context);
    }
  },
};
