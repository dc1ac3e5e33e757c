import { limitText } from '../limit-text.ts';
import { diameterText, stretchText, valueText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal, type PlacedFill, placedFills, spanOf } from '../strings.ts';

/** Half a percent: what rounding to the digits of a field note hides. */
const rounding = 0.995;

const unitOf = ({ fill }: PlacedFill): string => fill.volume?.unit ?? 'm3';

/** `254 mm hole, 168.3 mm casing`, of the lowest piece of the annulus. */
function sizesText({ record, string }: PlacedFill, { log: { units } }: RuleContext): string {
  const piece = record.pieces.at(-1);
  if (!piece) return '';
  const outer = piece.bounds === 'hole' ? 'hole' : `inside of string ${piece.bounds}`;
  return ` (${diameterText(piece.outer, units)} ${outer}, ${diameterText(piece.inner, units)} ${string.kind})`;
}

function reportOf(placed: PlacedFill, context: RuleContext): Report | null {
  const { fill, record } = placed;
  const { annulus, required, net } = record;
  if (annulus === null || required === null || net === null || net >= required * rounding) return null;
  const unit = unitOf(placed);
  const isShort = net < annulus * rounding;
  const where = `${fill.kind} ${stretchText(record.top, record.bottom, context.log.units)}`;
  const amount = `${valueText(net, unit)} ${record.placed === net ? 'placed' : 'left in the annulus'}`;
  const against = isShort
    ? `but the annulus alone holds ${valueText(annulus, unit)}${sizesText(placed, context)}: part of it stands empty`
    : `enough for the annulus, ${valueText(annulus, unit)}${sizesText(placed, context)}, but not for ${limitText(context, 'grout-allowance')}, ${valueText(required, unit)}`;
  return {
    span: spanOf(fill.volume, fill),
    doubts: [fill.volume],
    severity: isShort ? 'error' : 'warning',
    message: `${where}: ${amount}, ${against}; log what else was pumped, or mark the volume ? to ask the crew`,
    related: [{ span: placed.string.span, message: 'the string that it stands around' }],
    limit: 'grout-allowance',
  };
}

/** Grout or seal of which less was placed than its place holds. */
export const rule: Rule = {
  id: 'grout-short',
  severity: 'error',
  title: 'Less grout placed than the annulus holds',
  why: 'A volume under that of the bare annulus leaves part of it empty, and with it a way for shallow water down the well. Ground takes some grout as well, so that good practice places more than the bare volume.',
  mend: 'Log what else was pumped (`top-up`), correct the volume or a diameter, or mark the volume `?` to ask the crew.',
  source: 'geometry; the allowance is the pack’s, in `general` Wisconsin NR 812.20(3)(e)1',
  crew: 'Was more placed than is written, or is a volume or a diameter wrong?',
  flagged: [
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, [[0.18 m3]]',
      fixed:
        'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.18? m3',
    },
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, [[0.21 m3]]',
    },
  ],
  silent: [
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3',
    },
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.18? m3',
    },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.01 m3' },
  ],
  check: function* (context) {
    for (const placed of placedFills(context.log, context.record.fills)) {
      const report = isSeal(placed.fill) ? reportOf(placed, context) : null;
      if (report) yield report;
    }
  },
};
