import * as l10n from '@vscode/l10n';
import type { Fill, PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { numberText, stretchText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

function reportOf(fill: Fill, string: PipeString, ratio: number, { log, limits }: RuleContext): Report | null {
  const facts = factsOfFill(fill, string, log);
  const limit = limitGiven(limits, 'water-cement-most', facts);
  const share = fill.bentonite?.value ?? 0;
  const each = share > 0 ? limitGiven(limits, 'bentonite-water-each', facts) : null;
  const most = limit && limit.value + (each?.value ?? 0) * share;
  if (!limit || most === null || ratio <= most + 0.005) return null;
  const where = stretchText(fill.interval?.top?.value ?? null, fill.interval?.bottom?.value ?? null, log.units);
  return {
    span: (fill.waterCement ?? fill.water ?? fill.bags)?.span ?? fill.span,
    doubts: [fill.waterCement, fill.water, fill.bags?.count],
    message: each
      ? l10n.t(
          '{0} {1}: water to cement {2} by mass; at most {3}, {4}, and {5}: more water makes a weak grout that shrinks and bleeds; correct the water or the bags',
          kindText(fill),
          where,
          numberText(ratio),
          numberText(most),
          askedText(limit),
          askedText(each),
        )
      : l10n.t(
          '{0} {1}: water to cement {2} by mass; at most {3}, {4}: more water makes a weak grout that shrinks and bleeds; correct the water or the bags',
          kindText(fill),
          where,
          numberText(ratio),
          numberText(most),
          askedText(limit),
        ),
    limit: limit.key,
  };
}

/** Cement grout mixed with too much water. */
export const rule: Rule = {
  id: 'mix-too-wet',
  severity: 'warning',
  title: 'A cement grout with more water than the limit',
  why: 'Water beyond what the cement needs separates on top, and leaves the grout weak, shrunken and open to water.',
  mend: 'Correct the water, the bags or the ratio. Bentonite in the mix takes more water: log its share.',
  source:
    'the pack’s limit; in `general` Michigan R 325, Minnesota 4725 and Washington WAC 173-160; the water for bentonite Michigan R 325.1603a',
  crew: 'How much water was mixed with how many bags?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, w/c [[0.7]]',
      fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, w/c 0.7?',
    },
  ],
  silent: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, w/c 0.5' },
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, w/c 0.7, bentonite 5 %',
    },
  ],
  check: function* (context) {
    const ratios = new Map(context.record.fills.map((each) => [each.line, each.waterCement]));
    for (const string of context.log.strings)
      for (const fill of string.fills) {
        const ratio = fill.waterCement?.value ?? ratios.get(fill.line) ?? null;
        const report = ratio !== null && fill.fillClass !== 'concrete' ? reportOf(fill, string, ratio, context) : null;
        if (report) yield report;
      }
  },
};
