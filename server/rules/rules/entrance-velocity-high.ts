import * as l10n from '@vscode/l10n';
import { figureValues } from '../figure-values.ts';
import { limitText } from '../limit-text.ts';
import { intervalText, numberText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** Metres a second, as the text of the limit has them; in a file of feet in feet a second beside it. */
const velocityText = (velocity: number, { log: { units } }: RuleContext): string =>
  units.depth === 'ft'
    ? `${numberText(velocity / 0.3048)} ft/s (${numberText(velocity)} m/s)`
    : `${numberText(velocity)} m/s`;

/** Water that goes through the slots of a screen too fast. */
export const rule: Rule = {
  id: 'entrance-velocity-high',
  severity: 'information',
  title: 'Water that goes through the screen too fast',
  why: 'Fast water carries sand through the slots and wears them, and leaves scale on them.',
  mend: 'Check the open area, the length of the screen and the rate; pump less, or note why it was accepted.',
  source: 'the pack’s limit; in `general` Davis, Water and Wastewater Engineering (2010), p. 4-38',
  flagged: [
    {
      text: 'casing +0.5 - 36 pvc 141.3 sdr 17\n  [[screen 35 - 36 pvc 141.3, slot 0.5, open 5 %]]\ntest pump 90 L/min, 2 h',
      fixed:
        'casing +0.5 - 36 pvc 141.3 sdr 17\n  screen 35 - 36 pvc 141.3, slot 0.5, open 5? %\ntest pump 90 L/min, 2 h',
    },
  ],
  silent: [
    {
      text: 'casing +0.5 - 36 pvc 141.3 sdr 17\n  screen 30 - 36 pvc 141.3, slot 0.5, open 5 %\ntest pump 90 L/min, 2 h',
    },
    { text: 'casing +0.5 - 36 pvc 141.3 sdr 17\n  screen 35 - 36 pvc 141.3, slot 0.5\ntest pump 90 L/min, 2 h' },
  ],
  check: function* (context) {
    const most = context.limits['entrance-velocity-most'];
    const strings = context.log.strings.filter(({ screens }) => screens.length > 0);
    if (!most || strings.length === 0) return;
    const velocities = figureValues(context);
    for (const string of strings)
      for (const screen of string.screens) {
        const velocity = velocities.get(`casing.${string.number}.screen.${screen.number}.entrance-velocity`) ?? null;
        if (velocity === null || velocity <= most.value) continue;
        const report: Report = {
          span: screen.span,
          doubts: [screen.openArea, screen.interval.top, screen.interval.bottom],
          message: l10n.t(
            'water goes through the screen {0} at {1}; at most {2} keeps sand and scale off the slots; check the open area, the length and the rate',
            intervalText(screen.interval, context.log.units),
            velocityText(velocity, context),
            limitText(context, 'entrance-velocity-most'),
          ),
          limit: most.key,
        };
        yield report;
      }
  },
};
