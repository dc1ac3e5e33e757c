import { limitText } from '../limit-text.ts';
import { diameterText, stretchText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal, type PlacedFill, placedFills, sizeSpan } from '../strings.ts';

function reportOf({ string, fill, record }: PlacedFill, context: RuleContext): Report | null {
  const least = context.limits['oversize-least'];
  const { units } = context.log;
  const thin = record.pieces
    .filter(({ outer, inner }) => least && outer > inner && outer - inner < least.value - 1e-4)
    .sort((a, b) => a.outer - a.inner - (b.outer - b.inner))[0];
  if (!thin) return null;
  const around = thin.bounds === 'hole' ? 'the hole' : `the string around it, string ${thin.bounds},`;
  return {
    span: sizeSpan(string),
    message: `${around} is only ${diameterText(thin.outer - thin.inner, units)} wider than the ${string.kind} at ${stretchText(thin.top, thin.bottom, units)} (${diameterText(thin.outer, units)} and ${diameterText(thin.inner, units)}), and ${fill.kind} is logged there; at least ${limitText(context, 'oversize-least')} lets it pass all round; correct a diameter, or note how it was placed`,
    related: [{ span: fill.span, message: `the ${fill.kind}` }],
    limit: 'oversize-least',
  };
}

/** Grout logged in an annulus too narrow for it. */
export const rule: Rule = {
  id: 'annulus-thin',
  severity: 'warning',
  title: 'An annulus too thin for the grout logged in it',
  why: 'Grout does not pass evenly through a narrow annulus, and a tremie pipe does not go down it. The limit counts the difference between two diameters, not the thickness on one side.',
  mend: 'Correct a diameter, or note how the grout was placed.',
  source: 'the pack’s limit; in `general` Oregon OAR 690-210, Wisconsin NR 812 and Michigan R 325',
  flagged: [
    {
      text: 'hole\n  0 - 7.2 200\n  - 61 152\ncasing +0.45 - 7.2 steel [[168.3 x 6.4]]\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.1 m3',
    },
  ],
  silent: [
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3',
    },
    { text: 'hole\n  0 - 42.7 200\ncasing +0.6 - 42.7 steel 168.3 x 4.8 driven\n  shoe 42.7' },
  ],
  check: function* (context) {
    const told = new Set<number>();
    for (const placed of placedFills(context.log, context.record.fills)) {
      const report = isSeal(placed.fill) && !told.has(placed.string.number) ? reportOf(placed, context) : null;
      if (!report) continue;
      told.add(placed.string.number);
      yield report;
    }
  },
};
