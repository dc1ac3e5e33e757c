import * as l10n from '@vscode/l10n';
import type { Depth, PipeString, WaterFound } from '../../model/log.ts';
import { waterPlaces } from '../../record/water/shut-off.ts';
import { bottomOf } from '../columns.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { stringText } from '../strings.ts';

const depthOf = ({ depth, interval }: WaterFound): Depth | null => depth ?? interval?.bottom ?? null;

interface Shut {
  readonly depth: Depth;
  readonly string: PipeString;
}

function reportOf({ depth, string }: Shut, noneBelow: boolean, { log }: RuleContext): Report {
  const at = depthText(depth.value ?? 0, log.units);
  return {
    span: depth.span,
    doubts: [depth, string.interval.bottom],
    severity: noneBelow ? 'warning' : 'information',
    message: noneBelow
      ? l10n.t(
          'water at {0} stands behind {1}, and no water is logged below {2}: correct a depth, or log the screen or perforations that let it in',
          at,
          stringText(string, log),
          depthText(bottomOf(string) ?? 0, log.units),
        )
      : l10n.t('water at {0} stands behind {1}, so that it does not reach the well', at, stringText(string, log)),
    related: [{ span: string.interval.span, message: l10n.t('the string that shuts it off') }],
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
    const { strings, water } = context.log;
    const placeOf = waterPlaces(strings);
    const known = water.found.filter((found) => depthOf(found)?.value != null);
    const shut = known.flatMap((found): Shut[] => {
      const [depth, place] = [depthOf(found), placeOf(found)];
      return depth && place.where === 'behind' ? [{ depth, string: place.string }] : [];
    });
    return shut.map((each) => reportOf(each, shut.length === known.length, context));
  },
};
