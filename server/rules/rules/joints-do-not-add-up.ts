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

function reportOf(string: PipeString, tally: number, length: number, { log }: RuleContext): Report {
  const text = (metres: number) => lengthText(metres, log.units);
  const way = tally > length ? 'too long' : 'short';
  return {
    span: string.joints?.span ?? string.span,
    doubts: [string.interval.bottom, ...(string.joints?.lengths.map(({ length: each }) => each) ?? [])],
    message: `the joints add up to ${text(tally)}, but ${stringText(string, log)} is ${text(length)} long: the tally is ${text(tally - length)} ${way}; look for a joint left out or counted twice, a cut, or a wrong depth`,
    related: [{ span: string.interval.span, message: `${text(length)} from end to end` }],
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
