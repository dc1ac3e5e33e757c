import { intervalText } from '../messages.ts';
import type { Rule } from '../rule.ts';
import { isDriven, isSeal } from '../strings.ts';

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
  check: function* ({ log }) {
    for (const string of log.strings.filter((each) => !isDriven(each, log)))
      for (const fill of string.fills)
        if (isSeal(fill) && fill.fillClass === 'native')
          yield {
            span: fill.material?.span ?? fill.span,
            message: `${fill.kind} ${fill.interval ? intervalText(fill.interval, log.units) : ''} is ${fill.material?.name ?? 'native ground'}, which does not seal; log what did, or log it as pack`,
          };
  },
};
