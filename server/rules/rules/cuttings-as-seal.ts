import type { Fill, PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { intervalText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isDriven, isSeal } from '../strings.ts';

const reportOf = (fill: Fill, string: PipeString, { log, limits }: RuleContext): Report => {
  const barred = limitGiven(limits, 'native-seal-most', factsOfFill(fill, string, log));
  const by = barred ? `: ${askedText(barred)}` : '';
  return {
    span: fill.material?.span ?? fill.span,
    message: `${fill.kind} ${fill.interval ? intervalText(fill.interval, log.units) : ''} is ${fill.material?.name ?? 'native ground'}, which does not seal${by}; log what did, or log it as pack`,
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
  flagged: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 [[cuttings]]' }],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3' }],
  check: function* (context) {
    for (const string of context.log.strings.filter((each) => !isDriven(each, context.log)))
      for (const fill of string.fills)
        if (isSeal(fill) && fill.fillClass === 'native') yield reportOf(fill, string, context);
  },
};
