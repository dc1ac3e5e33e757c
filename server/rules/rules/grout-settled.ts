import * as l10n from '@vscode/l10n';
import { writeAfter } from '../fixes.ts';
import { limitText } from '../limit-text.ts';
import { lengthText } from '../messages.ts';
import type { Rule } from '../rule.ts';
import { kindText } from '../strings.ts';

/** Grout that settled and was not topped up. */
export const rule: Rule = {
  id: 'grout-settled',
  severity: 'information',
  title: 'Grout that settled with no top-up',
  why: 'Where grout has settled, the annulus is open at the surface, just where water and dirt run in.',
  mend: 'Log the `top-up`, or what was placed above the grout.',
  source: 'common practice, no source',
  crew: 'Was it topped up, and with how much?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, settled [[0.8]]',
      fixed:
        'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, settled 0.8, top-up ?',
    },
  ],
  silent: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, settled 0.8, top-up 40 L',
    },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, settled 0.1' },
  ],
  check: function* (context) {
    const most = context.limits['grout-settled-most'];
    for (const { settled, topUp, kind } of context.log.strings.flatMap((string) => string.fills)) {
      if (!most || topUp !== null || settled?.value == null || settled.value <= most.value) continue;
      yield {
        span: settled.span,
        doubts: [settled],
        fixes: () => [
          writeAfter(l10n.t('Ask the crew for a top-up, with ?'), settled.span, ', top-up ?', { preferred: true }),
        ],
        message: l10n.t(
          'the {0} settled {1}, over {2}, and no top-up is logged; log the top-up, or what stands above it',
          kindText({ kind }),
          lengthText(settled.value, context.log.units),
          limitText(context, 'grout-settled-most'),
        ),
        limit: 'grout-settled-most',
      };
    }
  },
};
