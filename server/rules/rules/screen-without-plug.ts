import * as l10n from '@vscode/l10n';
import type { PipeString } from '../../model/log.ts';
import { bottomOf } from '../columns.ts';
import { fix, lineAfter } from '../fixes.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** How far the foot of a screen may stand above that of its string, in metres, and still be its end. */
const nearFoot = 0.3;

const endsInScreen = ({ screens, interval }: PipeString): boolean =>
  screens.some((screen) => Math.abs((bottomOf(screen) ?? 1e9) - (interval.bottom?.value ?? -1e9)) <= nearFoot);

/** True where something closes the foot: a plug, a shoe, or a remark that may say so. */
const isClosed = ({ fills, shoe, screens, remark }: PipeString): boolean =>
  fills.some(({ kind }) => kind === 'plug') ||
  shoe !== null ||
  remark !== null ||
  screens.some((screen) => screen.remark !== null);

const reportOf = (string: PipeString, { log, tree }: RuleContext): Report => {
  const last = string.screens.at(-1)?.line ?? string.line;
  return {
    span: string.screens.at(-1)?.interval.span ?? string.interval.span,
    message: l10n.t(
      'nothing is logged that closes the foot of the screen at {0}; log the plug or the bottom plate, or ask the crew',
      depthText(bottomOf(string) ?? 0, log.units),
    ),
    fixes: () => [
      fix(l10n.t('Ask the crew for the plug, with ?'), [lineAfter(last, tree.lines[last]?.text ?? '', 'plug  ?  ?')], {
        preferred: true,
      }),
    ],
  };
};

/** A screen at the foot of its string with nothing that closes it. */
export const rule: Rule = {
  id: 'screen-without-plug',
  severity: 'information',
  title: 'A screen whose foot nothing closes',
  why: 'Sand comes in through an open foot, past every slot.',
  mend: 'Log the plug (`plug 36 cement`) or the bottom plate, or say in a remark how the foot is closed.',
  source: 'common practice, no source',
  crew: 'What closes the foot of the screen?',
  flagged: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen [[30 - 36]] pvc 114.3, slot 0.4',
      fixed: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.4\n  plug  ?  ?',
    },
  ],
  silent: [
    { text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.4\n  plug 36 cement' },
    { text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.4 ; capped' },
    { text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 24 - 30 pvc 114.3, slot 0.4' },
  ],
  check: (context) =>
    context.log.strings
      .filter((string) => string.screens.length > 0 && endsInScreen(string) && !isClosed(string))
      .map((string) => reportOf(string, context)),
};
