import * as l10n from '@vscode/l10n';
import type { WellLog } from '../../model/log.ts';
import type { Requirement } from '../../packs/requirements.ts';
import { saidBy } from '../asked.ts';
import { fix } from '../fixes.ts';
import { type FactToHold, factsToHold, lineForFact } from '../record-facts.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';

/** A record is looked at once the work is done; while it goes on, much is still to be written. */
const isDone = ({ finished, reported, disinfections, pumps, abandonments }: WellLog): boolean =>
  finished !== null || reported !== null || disinfections.length > 0 || pumps.length > 0 || abandonments.length > 0;

const shown = (lines: string): string => lines.trim().replace(/\s+/g, ' ');

const fixesOf = ({ lines }: FactToHold, line: number, end: number): Fix[] =>
  lines === null
    ? []
    : [
        fix(l10n.t('Add "{0}"', shown(lines)), [{ span: { line, start: end, end }, text: `\n${lines}` }], {
          preferred: true,
        }),
      ];

function reportOf(asked: Requirement, pack: string, index: number, { log, tree }: RuleContext): Report {
  const wanted = factsToHold[asked.fact];
  const line = lineForFact(wanted, log, tree);
  const text = tree.lines[line]?.text ?? '';
  const lacking = saidBy(asked, pack);
  return {
    span: { line, start: text.length - text.trimStart().length, end: text.length },
    message:
      wanted.lines === null
        ? l10n.t('the record lacks {0}; log it', lacking)
        : l10n.t('the record lacks {0}; write it, or {1} to ask the crew', lacking, shown(wanted.lines)),
    limit: `${pack}/record/${index}`,
    fixes: () => fixesOf(wanted, line, text.length),
  };
}

/** A fact that the pack's record must hold, and that the log lacks. */
export const rule: Rule = {
  id: 'record-incomplete',
  severity: 'warning',
  title: 'A fact that the record must hold and the log lacks',
  why: 'An office sends back a record that lacks something, often after everybody has forgotten it.',
  mend: 'Write the line. With `?` in it, it becomes a question for the crew; nothing is filled in for you. Looked for once the work is done: a finish, a report, disinfection, a pump or an abandonment.',
  source: 'the pack’s list; Texas 16 TAC 76. What is listed for Washington is plain content of the trade, not its text',
  crew: 'Do you know it?',
  flagged: [
    {
      text: 'rules texas-16-76\nwell KH-04\n[[finished 2026-05-06]]\nhole\n  0 - 61 152',
      fixed: 'rules texas-16-76\nwell KH-04\nfinished 2026-05-06\nplace  ?\nhole\n  0 - 61 152',
    },
    {
      text: 'rules washington-173-160\nowner A\nplace 47.1 -120.2\ncontractor B\ntechnician C\nlicence D\nuse domestic\nbegan 2026-05-04\nfinished 2026-05-06\nhole\n  0 - 61 152\nstrata\n  0 - 61 basalt\n[[casing +0.45 - 12 steel 168.3 x 6.4]]\nwater\n  level 5\ntest pump 40 L/min',
      fixed:
        'rules washington-173-160\nowner A\nplace 47.1 -120.2\ncontractor B\ntechnician C\nlicence D\nuse domestic\nbegan 2026-05-04\nfinished 2026-05-06\nhole\n  0 - 61 152\nstrata\n  0 - 61 basalt\ncasing +0.45 - 12 steel 168.3 x 6.4\n  seal  ? - ?  ?\nwater\n  level 5\ntest pump 40 L/min',
    },
  ],
  silent: [
    { text: 'rules texas-16-76\nplace 31.5 -98.2\nfinished 2026-05-06' },
    { text: 'rules texas-16-76\nplace ?\nfinished 2026-05-06' },
    { text: 'rules washington-173-160\nbegan 2026-05-04' },
    { text: 'finished 2026-05-06' },
  ],
  check: function* (context) {
    if (!isDone(context.log)) return;
    for (const { id, record } of context.limits.packs ?? [])
      for (const [index, asked] of record.entries())
        if (!factsToHold[asked.fact].isHeld(context.log)) yield reportOf(asked, id, index, context);
  },
};
