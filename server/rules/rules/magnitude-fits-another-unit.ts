import * as l10n from '@vscode/l10n';
import type { Span } from '../../../grammar/span.ts';
import { unitById } from '../../../grammar/units.ts';
import type { Depth, Measure, PipeString } from '../../model/log.ts';
import { fix } from '../fixes.ts';
import { numberText, orList, unitSign, valueText } from '../messages.ts';
import type { Edit, Fix, Report, Rule, RuleContext } from '../rule.ts';
import { isThousandfold, placedFills } from '../strings.ts';

const titles = {
  mm: (figure: string) => l10n.t('It is in millimetres: {0}', figure),
  cm: (figure: string) => l10n.t('It is in centimetres: {0}', figure),
  in: (figure: string) => l10n.t('It is in inches: {0}', figure),
  ft: (figure: string) => l10n.t('It is in feet: {0}', figure),
  L: (figure: string) => l10n.t('It is in litres: {0}', figure),
} as const;

type OtherUnit = keyof typeof titles;

/** A kind of value with the least and the most that a well has of it (SI), and the units that its number may be in. */
interface Range {
  /** The value in words, of its figure. */
  readonly what: (figure: string) => string;
  readonly least: number;
  readonly most: number;
  readonly units: readonly OtherUnit[];
}

const diameters: readonly OtherUnit[] = ['mm', 'cm', 'in'];

/* The ranges are wide on purpose: only what no water well has lies outside. Common practice, no source. */
const hole: Range = { what: (figure) => l10n.t('a hole of {0}', figure), least: 0.03, most: 2.5, units: diameters };
const pipe: Range = { what: (figure) => l10n.t('a pipe of {0}', figure), least: 0.015, most: 2, units: diameters };
const wall: Range = { what: (figure) => l10n.t('a wall of {0}', figure), least: 0.0005, most: 0.05, units: diameters };
const stickup: Range = {
  what: (figure) => l10n.t('a height above ground of {0}', figure),
  least: 0,
  most: 3,
  units: ['mm', 'cm', 'in', 'ft'],
};
const slot: Range = {
  what: (figure) => l10n.t('a slot of {0}', figure),
  least: 0.00005,
  most: 0.0127,
  units: ['mm', 'in'],
};

interface Suspect {
  readonly measure: Measure | Depth;
  readonly range: Range;
  /** What else to edit so that only this value changes its unit. */
  readonly beside: readonly Edit[];
}

const magnitude = ({ value }: Measure): number => Math.abs(value ?? 0);

const isOutside = ({ measure, range }: Suspect): boolean =>
  measure.value !== null && (magnitude(measure) < range.least || magnitude(measure) > range.most);

/** The units in which the same number would be in range. */
const fitting = ({ measure, range }: Suspect): OtherUnit[] =>
  range.units.filter((id) => {
    const si = Math.abs(measure.number ?? 0) * (unitById(id)?.factor ?? 0);
    return id !== measure.unit && si >= Math.max(range.least, 1e-9) && si <= range.most;
  });

/** The measure written again with another unit, its marks and figure kept. */
function inUnit(measure: Measure | Depth, unit: OtherUnit): Edit {
  const figure = measure.written.replace(/\s*[a-z"]+$/i, '');
  return { span: measure.span, text: `${figure} ${unit}` };
}

const figureOf = ({ number }: Measure, unit: string): string => `${numberText(Math.abs(number ?? 0), 7)} ${unit}`;

const fixesOf = ({ measure, beside }: Suspect, units: readonly OtherUnit[]): Fix[] =>
  units.map((unit) => fix(titles[unit](figureOf(measure, unit)), [inUnit(measure, unit), ...beside]));

function messageOf({ measure, range }: Suspect, units: readonly OtherUnit[]): string {
  const what = range.what(figureOf(measure, unitSign(measure.unit)));
  const meant = orList(units.map((unit) => figureOf(measure, unit)));
  return magnitude(measure) > range.most
    ? l10n.t('{0} is too large for a well; did you mean {1}?', what, meant)
    : l10n.t('{0} is too small for a well; did you mean {1}?', what, meant);
}

function reportOf(suspect: Suspect): Report | null {
  const units = fitting(suspect);
  if (!isOutside(suspect) || units.length === 0) return null;
  return {
    span: suspect.measure.span,
    message: messageOf(suspect, units),
    fixes: () => fixesOf(suspect, units),
  };
}

const suspect = (measure: Measure | Depth | null, range: Range, beside: readonly Edit[] = []): Suspect[] =>
  measure ? [{ measure, range, beside }] : [];

/** A unit on one side of `x` serves both sides, so that the other side must keep its own. */
const keepsUnit = (measure: Measure | null): Edit[] =>
  measure && !measure.unitWritten ? [{ span: endOf(measure.span), text: ` ${measure.unit}` }] : [];

const endOf = (span: Span): Span => ({ ...span, start: span.end });

/** A wall is at most a quarter of the outside diameter. */
function wallSuspects({ size: { wall: thickness, outside, outsideDiameter } }: PipeString): Suspect[] {
  const most = Math.min(wall.most, (outsideDiameter ?? 1) / 4);
  return suspect(thickness, { ...wall, most }, keepsUnit(outside));
}

const stringSuspects = (string: PipeString): Suspect[] => [
  ...suspect(string.size.outside, pipe, keepsUnit(string.size.wall)),
  ...wallSuspects(string),
  ...((string.interval.top?.value ?? 0) < 0
    ? suspect(string.interval.top, stickup, keepsUnit(string.interval.bottom))
    : []),
  ...string.screens.flatMap((screen) => suspect(screen.slot, slot)),
];

/** Grout that is hundreds of times the annulus was written in the unit that is a thousand times larger. */
const volumeSuspects = ({ log, record }: RuleContext): Suspect[] =>
  placedFills(log, record.fills).flatMap(({ fill, record: { annulus, net } }) => {
    if (annulus === null || net === null || annulus <= 0 || !isThousandfold(net, annulus)) return [];
    const room = () => valueText(annulus, fill.volume?.unit ?? 'm3');
    return suspect(fill.volume, {
      what: (figure) => l10n.t('a volume round {0} of annulus of {1}', room(), figure),
      least: annulus / 3,
      most: annulus * 5,
      units: ['L'],
    });
  });

/** A figure that only makes sense in another unit. */
export const rule: Rule = {
  id: 'magnitude-fits-another-unit',
  severity: 'error',
  title: 'A figure that only makes sense in another unit',
  why: 'A bare number takes the unit of the file. A 6 mm hole was a 6 in hole, and every volume reckoned from it is wrong.',
  mend: 'Write the unit beside the number, or correct the `units` line.',
  source: 'the range of common sizes; common practice, no source',
  crew: 'In what unit was it measured?',
  flagged: [
    { text: 'hole\n  0 - 61 [[6]]', fixed: 'hole\n  0 - 61 6 cm' },
    { text: 'units ft in\nhole\n  0 - 200 [[152]]' },
    { text: 'units ft in\ncasing [[+150]] - 24 steel 6.625 x 0.25\n  shoe 24' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x [[0.25]]\n  shoe 7.2' },
    { text: 'units ft in\ncasing +1.5 - 24 steel 6.625 x [[6.4]]\n  shoe 24' },
  ],
  silent: [
    { text: 'hole\n  0 - 7.2 254\n  7.2 - 61 6 in' },
    { text: 'units ft in\nhole\n  0 - 200 6' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
  ],
  check: (context) =>
    [
      ...context.log.hole.flatMap(({ diameter }) => suspect(diameter, hole)),
      ...context.log.drilling.flatMap((each) => suspect(each.pipe, pipe)),
      ...context.log.strings.flatMap(stringSuspects),
      ...volumeSuspects(context),
    ].flatMap((each) => reportOf(each) ?? []),
};
