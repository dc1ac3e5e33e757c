import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfString } from '../facts.ts';
import { numberText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';
import { isDriven } from '../strings.ts';

const messageOf = (count: number, asked: string): string =>
  count === 1
    ? l10n.t(
        '1 centralizer stands together; {0} hold the casing in the middle; correct the number, or ask the authority',
        asked,
      )
    : l10n.t(
        '{0} centralizers stand together; {1} hold the casing in the middle; correct the number, or ask the authority',
        numberText(count),
        asked,
      );

/** Centralizers of which fewer stand together than the pack asks. */
export const rule: Rule = {
  id: 'centralizer-set-small',
  severity: 'warning',
  title: 'Fewer centralizers at one depth than the pack asks',
  why: 'One or two guides at a depth let the casing lean to the side that has none.',
  mend: 'Correct how many stand together (`sets of 3`), or ask the authority.',
  source: 'the pack’s limit; Wisconsin NR 812',
  crew: 'How many guides stand together at each depth?',
  flagged: [
    {
      text: 'rules wisconsin-nr812\nunits ft in\ncasing +1.5 - 50 steel 6.625 x 0.28\n  guides 5 25 48, sets of [[2]]\n  grout 0 - 50 neat cement',
      fixed:
        'rules wisconsin-nr812\nunits ft in\ncasing +1.5 - 50 steel 6.625 x 0.28\n  guides 5 25 48, sets of 2?\n  grout 0 - 50 neat cement',
    },
  ],
  silent: [
    {
      text: 'rules wisconsin-nr812\nunits ft in\ncasing +1.5 - 50 steel 6.625 x 0.28\n  guides 5 25 48, sets of 3\n  grout 0 - 50 neat cement',
    },
    {
      text: 'rules wisconsin-nr812\nunits ft in\ncasing +1.5 - 50 steel 6.625 x 0.28\n  guides 5 25 48\n  grout 0 - 50 neat cement',
    },
    { text: 'casing +0.45 - 15 steel 168.3 x 6.4\n  centralizers 2 8 14, sets of 2\n  grout 0 - 15 neat cement' },
  ],
  check: ({ log, limits }) =>
    log.strings.flatMap((string): Report[] => {
      const count = string.centralizers?.inSet ?? null;
      const least = limitGiven(limits, 'centralizer-set-least', factsOfString(string, log));
      if (!least || count === null || count.value === null || count.value >= least.value || isDriven(string, log))
        return [];
      return [
        {
          span: count.span,
          doubts: [count],
          message: messageOf(count.value, askedText(least)),
          limit: least.key,
        },
      ];
    }),
};
