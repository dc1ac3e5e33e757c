import * as l10n from '@vscode/l10n';
import type { Dimension } from '../../../grammar/units.ts';
import { meantOrRemark, ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const words: Readonly<Record<Dimension, () => string>> = {
  length: () => l10n.t('a length'),
  volume: () => l10n.t('a volume'),
  mass: () => l10n.t('a mass'),
  time: () => l10n.t('a time'),
  rate: () => l10n.t('a rate'),
  pressure: () => l10n.t('a pressure'),
  power: () => l10n.t('a power'),
  concentration: () => l10n.t('a concentration'),
  density: () => l10n.t('a density'),
  share: () => l10n.t('a percentage'),
  temperature: () => l10n.t('a temperature'),
  count: () => l10n.t('a count of bags'),
  conductivity: () => l10n.t('a conductivity'),
  force: () => l10n.t('a force'),
  'open-area': () => l10n.t('an open area'),
};

const wordFor = (dimension: string): string => {
  const known: Readonly<Record<string, () => string>> = words;
  return known[dimension]?.() ?? dimension;
};

/** A value whose unit does not fit its place. */
export const rule: Rule = {
  id: 'wrong-kind',
  severity: 'error',
  title: 'A value whose unit does not fit',
  why: 'A value says what it is by its unit; here nothing of that kind belongs.',
  mend: 'Correct the unit, or move the value to the line that it belongs to.',
  source: 'the notation',
  flagged: [{ text: 'hole\n  0 - 7.2 254 [[40 L/min]]', fixed: 'hole\n  0 - 7.2 254  ; 40 L/min' }],
  silent: [{ text: 'hole\n  0 - 7.2 254 mm' }],
  check: ofProblem('wrong-kind', {
    message: ({ written, facts }) =>
      l10n.t(
        '{0} is {1}, and this line takes none; correct the unit, or move it to where it belongs',
        written,
        wordFor(facts.dimension ?? ''),
      ),
    fixes: meantOrRemark,
  }),
};
