import * as l10n from '@vscode/l10n';
import type { PipeString } from '../../model/log.ts';
import { lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { lengthAsSet, stringText } from '../strings.ts';

const tallyOf = ({ joints }: PipeString): number | null =>
  joints?.lengths.length
    ? joints.lengths.reduce<number | null>(
        (sum, { count, length }) => (sum === null || length.value === null ? null : sum + count * length.value),
        0,
      )
    : null;

type Words = (tally: string, string: string, length: string, apart: string) => string;

const tooLong: Words = (...parts) =>
  l10n.t(
    'the joints add up to {0}, but {1} is {2} long: the tally is {3} too long; look for a joint left out or counted twice, a cut, or a wrong depth',
    ...parts,
  );

const short: Words = (...parts) =>
  l10n.t(
    'the joints add up to {0}, but {1} is {2} long: the tally is {3} short; look for a joint left out or counted twice, a cut, or a wrong depth',
    ...parts,
  );

function reportOf(string: PipeString, tally: number, length: number, { log }: RuleContext): Report {
  const text = (metres: number) => lengthText(metres, log.units);
  return {
    span: string.joints?.span ?? string.span,
    doubts: [string.interval.bottom, ...(string.joints?.lengths.map(({ length: each }) => each) ?? [])],
    message: (tally > length ? tooLong : short)(
      text(tally),
      stringText(string, log),
      text(length),
      text(tally - length),
    ),
    related: [{ span: string.interval.span, message: l10n.t('{0} from end to end', text(length)) }],
    limit: 'joints-difference-most',
  };
}

/** A tally of joints that is not the length of its string. */
export const rule: Rule = {
  id: 'joints-do-not-add-up',
  severity: 'warning',
  title: 'Joints that do not add up to the length of their string',
  why: 'The tally is the only measurement of where the foot of the casing really is.',
  mend: 'Look for a joint left out or counted twice, a length cut off (log it with `cut`), or a wrong depth.',
  source: 'arithmetic; how far apart they may be is common practice, no source',
  crew: 'How long is each joint, and was one left out or cut?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  [[joints 6.1 6.1]]',
      fixed: 'casing +0.45 - 7.2? steel 168.3 x 6.4\n  shoe 7.2\n  joints 6.1 6.1',
    },
  ],
  silent: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  joints 6.1 1.55' },
    { text: 'casing +0.9 - 12 steel 168.3 x 6.4\n  shoe 12\n  cut +0.9 to +0.45\n  joints 2 x 6.1 0.7' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  joints 6.1 ?' },
  ],
  check: function* (context) {
    const most = context.limits['joints-difference-most']?.value ?? 0.15;
    for (const string of context.log.strings) {
      const tally = tallyOf(string);
      const length = lengthAsSet(string);
      if (tally !== null && length !== null && Math.abs(tally - length) > most + 1e-9)
        yield reportOf(string, tally, length, context);
    }
  },
};
