import * as l10n from '@vscode/l10n';
import { figureValues } from '../figure-values.ts';
import type { Report, Rule } from '../rule.ts';
import { stringText } from '../strings.ts';

/** Casing that its grout lifts, even when it is full of water. */
export const rule: Rule = {
  id: 'casing-may-float',
  severity: 'information',
  title: 'Casing that floats in its grout',
  why: 'Light pipe rises in fluid grout, and the seal is lost at its foot.',
  mend: 'Note how the casing was held down. Holding it down is hoisting work: follow the local code and licensed practice.',
  source: 'the record’s figures for the weight of the casing in its grout',
  crew: 'How was the casing held down while the grout was fluid?',
  unfixed: 'How the casing was held down is known only to the crew; no figure of the log is wrong.',
  flagged: [
    {
      text: 'hole\n  0 - 40 200\ncasing [[+0.5 - 40]] pvc 114.3 sdr 26\n  grout 0 - 40 neat cement, w/c 0.5, 1 m3, tremie',
    },
  ],
  silent: [
    {
      text: 'hole\n  0 - 40 250\ncasing +0.5 - 40 steel 168.3 x 6.4\n  grout 0 - 40 neat cement, w/c 0.5, 1.4 m3, tremie',
    },
    {
      text: 'hole\n  0 - 40 200\ncasing +0.5 - 40 pvc 114.3 sdr 26 ; held down by the rig\n  grout 0 - 40 neat cement, w/c 0.5, 1 m3, tremie',
    },
    { text: 'hole\n  0 - 40 200\ncasing +0.5 - 40 pvc 114.3 sdr 26\n  grout 0 - 40 neat cement, 1 m3, tremie' },
  ],
  check: (context) => {
    const values = figureValues(context);
    return context.log.strings.flatMap((string): Report[] => {
      const weight = values.get(`casing.${string.number}.buoyed-weight-full`) ?? null;
      if (weight === null || weight >= 0 || string.remark !== null) return [];
      return [
        {
          span: string.interval.span,
          message: l10n.t(
            '{0} is lighter than the grout that it displaces, even full of water: it floats until the grout sets; note in a remark how it was held down',
            stringText(string, context.log),
          ),
        },
      ];
    });
  },
};
