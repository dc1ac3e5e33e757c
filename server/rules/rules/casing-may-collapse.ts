import * as l10n from '@vscode/l10n';
import type { Fill, PipeString } from '../../model/log.ts';
import { figureValues } from '../figure-values.ts';
import { stretchText, valueText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal, kindText, sizeSpan } from '../strings.ts';

type Values = ReadonlyMap<string, number | null>;

/** What the string withstands, in Pa: plastic under cement is warm, and withstands less. */
const resistanceOf = ({ number }: PipeString, values: Values): number | null =>
  values.get(`casing.${number}.collapse-resistance-setting`) ??
  values.get(`casing.${number}.collapse-resistance`) ??
  null;

function reportOf(string: PipeString, fill: Fill, values: Values, { log }: RuleContext): Report[] {
  const pressure = values.get(`casing.${string.number}.${fill.kind}.${fill.number}.pressure-difference`) ?? null;
  const resistance = resistanceOf(string, values);
  if (pressure === null || resistance === null || pressure <= resistance) return [];
  const where = stretchText(fill.interval?.top?.value ?? null, fill.interval?.bottom?.value ?? null, log.units);
  return [
    {
      span: sizeSpan(string),
      doubts: [string.size.wall ?? string.size.outside ?? string.size.nominal, fill.interval?.bottom],
      message: l10n.t(
        '{0} {1} presses on the {2} with {3} while it is fluid, even if the {2} is full of water, and such pipe withstands {4}: it may collapse; correct the wall or a depth, or note how it was placed in stages. Cementing is licensed work: follow the maker of the pipe and the local code',
        kindText(fill),
        where,
        kindText(string),
        valueText(pressure, 'kPa'),
        valueText(resistance, 'kPa'),
      ),
      related: [{ span: fill.span, message: l10n.t('the {0}', kindText(fill)) }],
    },
  ];
}

/** Casing that its own grout may crush. */
export const rule: Rule = {
  id: 'casing-may-collapse',
  severity: 'warning',
  title: 'Grout that presses harder than the casing withstands',
  why: 'Fluid grout is heavier than water. Thin or plastic pipe is crushed by it, and cement that sets warms plastic, which then withstands less.',
  mend: 'Correct the wall, the size or a depth, or note that the grout was placed in stages and the casing held full.',
  source: 'the record’s figures for pressure and collapse, each with its source',
  crew: 'What wall has the pipe, and was the grout placed in one go?',
  flagged: [
    {
      text: 'hole\n  0 - 150 200\ncasing +0.5 - 150 pvc [[114.3 sdr 41]]\n  grout 0 - 150 neat cement, w/c 0.5, 3.5 m3, tremie',
      fixed:
        'hole\n  0 - 150 200\ncasing +0.5 - 150 pvc 114.3? sdr 41\n  grout 0 - 150 neat cement, w/c 0.5, 3.5 m3, tremie',
    },
  ],
  silent: [
    {
      text: 'hole\n  0 - 40 250\ncasing +0.5 - 40 steel 168.3 x 6.4\n  grout 0 - 40 neat cement, w/c 0.5, 1.4 m3, tremie',
    },
    { text: 'hole\n  0 - 150 200\ncasing +0.5 - 150 pvc 114.3 sdr 41\n  grout 0 - 150 neat cement, 3.5 m3, tremie' },
  ],
  check: function* (context) {
    if (!context.log.strings.some(({ fills }) => fills.some(isSeal))) return;
    const values = figureValues(context);
    for (const string of context.log.strings)
      for (const fill of string.fills.filter(isSeal)) yield* reportOf(string, fill, values, context);
  },
};
