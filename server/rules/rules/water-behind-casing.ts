import type { Depth, PipeString, WaterFound } from '../../model/log.ts';
import { bottomOf, topOf } from '../columns.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isLining, isPermanent, stringText } from '../strings.ts';

const depthOf = ({ depth, interval }: WaterFound): Depth | null => depth ?? interval?.bottom ?? null;

const isOpen = (string: PipeString): boolean =>
  string.screens.length > 0 || string.perforated.length > 0 || isLining(string);

/** The string that shuts off a depth; null where none does. */
const behind = (depth: number, { log }: RuleContext): PipeString | null =>
  log.strings.find(
    (string) =>
      string.kind !== 'screen' &&
      isPermanent(string) &&
      !isOpen(string) &&
      (topOf(string) ?? Number.POSITIVE_INFINITY) < depth &&
      (bottomOf(string) ?? -1) > depth,
  ) ?? null;

interface Shut {
  readonly depth: Depth;
  readonly string: PipeString;
}

function reportOf({ depth, string }: Shut, noneBelow: boolean, { log }: RuleContext): Report {
  const foot = depthText(bottomOf(string) ?? 0, log.units);
  const end = noneBelow
    ? `and no water is logged below ${foot}: correct a depth, or log the screen or perforations that let it in`
    : 'so that it does not reach the well';
  return {
    span: depth.span,
    doubts: [depth, string.interval.bottom],
    severity: noneBelow ? 'warning' : 'information',
    message: `water at ${depthText(depth.value ?? 0, log.units)} stands behind ${stringText(string, log)}, ${end}`,
    related: [{ span: string.interval.span, message: 'the string that shuts it off' }],
  };
}

/** Water found at a depth that a string shuts off. */
export const rule: Rule = {
  id: 'water-behind-casing',
  severity: 'information',
  title: 'Water found behind casing',
  why: 'Water behind solid casing does not feed the well. Often that is meant; where all the water lies behind it, a depth is wrong or the openings are not logged.',
  mend: 'Nothing, where it was meant. Else correct a depth, or log the screen or the perforations.',
  source: 'geometry',
  crew: 'At what depth did the water come in?',
  flagged: [
    {
      text: 'casing +0.45 - 12 steel 168.3 x 6.4\n  shoe 12\nwater\n  [[8]] fresh, 5 L/min\n  38.5 fresh, 25 L/min',
      fixed: 'casing +0.45 - 12 steel 168.3 x 6.4\n  shoe 12\nwater\n  8? fresh, 5 L/min\n  38.5 fresh, 25 L/min',
    },
    { text: 'casing +0.45 - 12 steel 168.3 x 6.4\n  shoe 12\nwater\n  [[8]] fresh, 5 L/min' },
  ],
  silent: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\nwater\n  38.5 fresh, 25 L/min' },
    { text: 'liner 24.4 - 61 pvc 114.3 sdr 26, perforated 48.8 - 61\nwater\n  54 fresh, 15 L/min' },
    { text: 'casing +0.5 - 6.5 concrete 900\nwater\n  5 fresh' },
    { text: 'casing 0 - 9.1 steel 273 temporary, pulled 2026-05-05\nwater\n  8 fresh, 5 L/min' },
  ],
  check: (context) => {
    const depths = context.log.water.found.map(depthOf).filter((depth) => depth !== null && depth.value !== null);
    const shut = depths.flatMap((depth): Shut[] => {
      const string = depth?.value == null ? null : behind(depth.value, context);
      return depth && string ? [{ depth, string }] : [];
    });
    return shut.map((each) => reportOf(each, shut.length === depths.length, context));
  },
};
