import * as l10n from '@vscode/l10n';
import { limitText } from '../limit-text.ts';
import { diameterText, stretchText, valueText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal, kindText, type PlacedFill, placedFills, spanOf } from '../strings.ts';

/** Half a percent: what rounding to the digits of a field note hides. */
const rounding = 0.995;

const unitOf = ({ fill }: PlacedFill): string => fill.volume?.unit ?? 'm3';

/** `254 mm hole, 168.3 mm casing`, of the lowest piece of the annulus; empty where none is known. */
function sizesText({ record, string }: PlacedFill, { log: { units } }: RuleContext): string {
  const piece = record.pieces.at(-1);
  if (!piece) return '';
  const [outer, inner] = [diameterText(piece.outer, units), diameterText(piece.inner, units)];
  return piece.bounds === 'hole'
    ? l10n.t('{0} hole, {1} {2}', outer, inner, kindText(string))
    : l10n.t('{0} inside of string {1}, {2} {3}', outer, piece.bounds, inner, kindText(string));
}

/* The fill, where, how much of it, what the annulus holds; then the allowance and what that makes. */
type Words = (...parts: string[]) => string;

const placedShort: Words = (...parts) =>
  l10n.t(
    '{0} {1}: {2} placed, but the annulus alone holds {3}: part of it stands empty; log what else was pumped, or mark the volume ? to ask the crew',
    ...parts,
  );

const leftShort: Words = (...parts) =>
  l10n.t(
    '{0} {1}: {2} left in the annulus, but the annulus alone holds {3}: part of it stands empty; log what else was pumped, or mark the volume ? to ask the crew',
    ...parts,
  );

const placedBare: Words = (...parts) =>
  l10n.t(
    '{0} {1}: {2} placed, enough for the annulus, {3}, but not for {4}, {5}; log what else was pumped, or mark the volume ? to ask the crew',
    ...parts,
  );

const leftBare: Words = (...parts) =>
  l10n.t(
    '{0} {1}: {2} left in the annulus, enough for the annulus, {3}, but not for {4}, {5}; log what else was pumped, or mark the volume ? to ask the crew',
    ...parts,
  );

function reportOf(placed: PlacedFill, context: RuleContext): Report | null {
  const { fill, record } = placed;
  const { annulus, required, net } = record;
  if (annulus === null || required === null || net === null || net >= required * rounding) return null;
  const unit = unitOf(placed);
  const isShort = net < annulus * rounding;
  const sizes = sizesText(placed, context);
  const parts = [
    kindText(fill),
    stretchText(record.top, record.bottom, context.log.units),
    valueText(net, unit),
    `${valueText(annulus, unit)}${sizes && ` (${sizes})`}`,
    limitText(context, 'grout-allowance'),
    valueText(required, unit),
  ];
  const [short, bare] = record.placed === net ? [placedShort, placedBare] : [leftShort, leftBare];
  return {
    span: spanOf(fill.volume, fill),
    doubts: [fill.volume],
    severity: isShort ? 'error' : 'warning',
    message: (isShort ? short : bare)(...parts),
    related: [{ span: placed.string.span, message: l10n.t('the string that it stands around') }],
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
