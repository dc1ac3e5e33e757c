import type { Depth } from '../../model/log.ts';
import type { Report, Rule } from '../rule.ts';

/** As many depths as it takes for their decimals to tell anything. */
const enough = 5;

/** `12.07`, or a plain `12`: what twelve feet and seven inches look like when the point parts them. */
const looksLikeInches = ({ written, decimals, number }: Depth): boolean =>
  decimals === 2 && number !== null && /\.(0\d|1[01])\D*$/.test(written);

function reportOf(depths: readonly Depth[]): Report[] {
  const decimal = depths.filter(
    ({ decimals, unit, written }) => unit === 'ft' && decimals > 0 && !written.includes("'"),
  );
  const first = decimal[0];
  if (!first || decimal.length < enough || !decimal.every(looksLikeInches)) return [];
  return [
    {
      span: first.span,
      message: `none of the ${decimal.length} depths with decimals in this log passes .11: ${first.written} may stand for feet and inches; write 12'7" for feet and inches, or allow this with a reason`,
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
  flagged: [
    {
      text: 'units ft in\nstrata\n  0 - [[3.07]] clay\n  - 12.11 sand\n  - 20.02 gravel\n  - 31.10 shale\n  - 44.06 limestone',
    },
  ],
  silent: [
    {
      text: 'units ft in\nstrata\n  0 - 3.07 clay\n  - 12.5 sand\n  - 20.02 gravel\n  - 31.10 shale\n  - 44.06 limestone',
    },
    { text: 'units ft in\nstrata\n  0 - 3.07 clay\n  - 12.11 sand' },
    { text: 'strata\n  0 - 3.07 clay\n  - 12.11 sand\n  - 20.02 gravel\n  - 31.10 shale\n  - 44.06 limestone' },
  ],
  check: ({ log }) =>
    log.units.depth === 'ft'
      ? reportOf([...log.strata, ...log.hole].flatMap(({ interval }) => interval.bottom ?? []))
      : [],
};
