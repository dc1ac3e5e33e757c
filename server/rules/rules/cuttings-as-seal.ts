import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import type { Tree } from '../../../grammar/tree.ts';
import type { Fill, PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { fix } from '../fixes.ts';
import { intervalText } from '../messages.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';
import { isDriven, isSeal, kindText } from '../strings.ts';

/** What was placed stays as it was logged; only what it is called no longer says that it seals. */
function logAsPack({ lines }: Tree, { line }: Fill): Fix[] {
  const keyword = lines[line]?.keyword;
  return keyword
    ? [fix(l10n.t('Log it as pack, which seals nothing'), [{ span: spanAt(line, keyword), text: 'pack' }])]
    : [];
}

const reportOf = (fill: Fill, string: PipeString, { tree, log, limits }: RuleContext): Report => {
  const barred = limitGiven(limits, 'native-seal-most', factsOfFill(fill, string, log));
  const parts = [
    kindText(fill),
    fill.interval ? intervalText(fill.interval, log.units) : '',
    fill.material?.name ?? 'native ground',
  ] as const;
  return {
    span: fill.material?.span ?? fill.span,
    fixes: () => logAsPack(tree, fill),
    message: barred
      ? l10n.t('{0} {1} is {2}, which does not seal: {3}; log what did, or log it as pack', ...parts, askedText(barred))
      : l10n.t('{0} {1} is {2}, which does not seal; log what did, or log it as pack', ...parts),
    ...(barred ? { limit: barred.key } : {}),
  };
};

/** Cuttings or other native ground logged as grout or seal. */
export const rule: Rule = {
  id: 'cuttings-as-seal',
  severity: 'warning',
  title: 'Cuttings used as grout or seal',
  why: 'Cuttings shovelled back let water through, and settle. They fill a hole; they do not seal it.',
  mend: 'Log what sealed the annulus. Where cuttings only fill it, log them as `pack`.',
  source: 'common practice; Quebec Q-2, r. 6 (since replaced) barred cuttings from the seal',
  crew: 'What was placed there to seal the annulus?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 [[cuttings]]',
      fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  pack 0 - 7.2 cuttings',
    },
  ],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3' }],
  check: function* (context) {
    for (const string of context.log.strings.filter((each) => !isDriven(each, context.log)))
      for (const fill of string.fills)
        if (isSeal(fill) && fill.fillClass === 'native') yield reportOf(fill, string, context);
  },
};
