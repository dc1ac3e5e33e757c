import * as l10n from '@vscode/l10n';
import type { Depth } from '../../model/log.ts';
import { fix } from '../fixes.ts';
import type { Fix, Report, Rule } from '../rule.ts';

/** As many depths as it takes for their decimals to tell anything. */
const enough = 5;

/** `12.07`, or a plain `12`: what twelve feet and seven inches look like when the point parts them. */
const looksLikeInches = ({ written, decimals, number }: Depth): boolean =>
  decimals === 2 && number !== null && /\.(0\d|1[01])\D*$/.test(written);

/** `12'7"` of `12.07`. */
const inInches = ({ written }: Depth): string =>
  written.replace(/(\d+)\.(\d\d)(?:\s*[a-z]+)?/i, (_, feet: string, inches: string) => `${feet}'${Number(inches)}"`);

const isDecimal = ({ decimals, unit, written }: Depth): boolean =>
  unit === 'ft' && decimals > 0 && !written.includes("'");

/** Writes every depth of the two columns as feet and inches; none where some would not be a number of inches. */
function asInches(depths: readonly Depth[]): Fix[] {
  const own = depths.filter(isDecimal);
  if (!own.every(looksLikeInches)) return [];
  const places = new Map(own.map((each) => [`${each.span.line}:${each.span.start}`, each]));
  const edits = [...places.values()].map((each) => ({ span: each.span, text: inInches(each) }));
  return [fix(l10n.t('They are feet and inches: write them so'), edits)];
}

function reportOf(depths: readonly Depth[], all: readonly Depth[]): Report[] {
  const decimal = depths.filter(isDecimal);
  const first = decimal[0];
  if (!first || decimal.length < enough || !decimal.every(looksLikeInches)) return [];
  return [
    {
      span: first.span,
      fixes: () => asInches(all),
      message: l10n.t(
        'none of the {0} depths with decimals in this log passes .11: {1} may stand for feet and inches; write 12\'7" for feet and inches, or allow this with a reason',
        decimal.length,
        first.written,
      ),
    },
  ];
}

/** Depths in feet whose decimals never pass .11. */
export const rule: Rule = {
  id: 'inches-as-decimals',
  severity: 'information',
  title: 'Feet and inches written as if inches were decimals',
  why: 'Twelve feet seven inches is 12.58 ft. Written as 12.07 it is half a foot out, and nobody sees it in a single figure.',
  mend: 'Write feet and inches with their marks: `12\'7"`.',
  source: 'common practice, no source',
  crew: 'Are these depths decimal feet, or feet and inches?',
  flagged: [
    {
      text: 'units ft in\nstrata\n  0 - [[3.07]] clay\n  - 12.11 sand\n  - 20.02 gravel\n  - 31.10 shale\n  - 44.06 limestone',
      fixed:
        'units ft in\nstrata\n  0 - 3\'7" clay\n  - 12\'11" sand\n  - 20\'2" gravel\n  - 31\'10" shale\n  - 44\'6" limestone',
    },
  ],
  silent: [
    {
      text: 'units ft in\nstrata\n  0 - 3.07 clay\n  - 12.5 sand\n  - 20.02 gravel\n  - 31.10 shale\n  - 44.06 limestone',
    },
    { text: 'units ft in\nstrata\n  0 - 3.07 clay\n  - 12.11 sand' },
    { text: 'strata\n  0 - 3.07 clay\n  - 12.11 sand\n  - 20.02 gravel\n  - 31.10 shale\n  - 44.06 limestone' },
  ],
  check: ({ log }) => {
    if (log.units.depth !== 'ft') return [];
    const intervals = [...log.strata, ...log.hole].map(({ interval }) => interval);
    const bottoms = intervals.flatMap(({ bottom }) => bottom ?? []);
    return reportOf(bottoms, [...bottoms, ...intervals.flatMap(({ top }) => top ?? [])]);
  },
};
