import * as l10n from '@vscode/l10n';
import type { WellLog } from '../../model/log.ts';
import type { Limits } from '../../packs/limits.ts';
import { fix, lineAfter } from '../fixes.ts';
import type { Rule } from '../rule.ts';

const drunk = new Set(['domestic', 'public-supply', 'livestock']);

const isDrunk = ({ uses }: WellLog): boolean => uses.some((use) => 'id' in use && drunk.has(use.id));

/** A pack that asks for it says so itself. */
const isAskedByPack = ({ packs = [] }: Limits): boolean =>
  packs.some(({ record }) => record.some(({ fact }) => fact === 'disinfection'));

/** A finished well for drinking water of which no disinfection is logged. */
export const rule: Rule = {
  id: 'disinfection-missing',
  severity: 'information',
  title: 'A well for drinking water with no disinfection logged',
  why: 'Drilling and pump work carry germs into a well, and most codes ask that it is disinfected before it is used.',
  mend: 'Log the disinfection, with `?` for what nobody knows. Chlorine hurts: follow the label and the local code.',
  source: 'common practice; most codes ask it',
  crew: 'Was the well disinfected, with what, how strong and for how long?',
  flagged: [
    {
      text: 'use domestic\n[[finished]] 2026-05-06\npump submersible',
      fixed: 'use domestic\nfinished 2026-05-06\npump submersible\ndisinfection  ?',
    },
  ],
  silent: [
    { text: 'use domestic\nfinished 2026-05-06\ndisinfection ?' },
    { text: 'use domestic\nbegan 2026-05-04' },
    { text: 'use monitoring\nfinished 2026-05-06' },
    { text: 'use domestic\nfinished 2026-05-06\nstatus dry' },
    { text: 'use domestic\nfinished 2026-05-06\nabandonment\n  0 - 61 neat cement' },
  ],
  check: ({ log, tree, limits }) => {
    const { finished, disinfections, abandonments, status } = log;
    const isUsed = status === null || ('id' in status && status.id === 'in-use');
    if (
      !finished ||
      !isDrunk(log) ||
      !isUsed ||
      disinfections.length + abandonments.length > 0 ||
      isAskedByPack(limits)
    )
      return [];
    const keyword = tree.lines[finished.span.line]?.keyword ?? finished.span;
    const last = tree.lines.findLastIndex(({ text }) => text.trim() !== '');
    const end = { ...lineAfter(last, tree.lines[last]?.text ?? '', ''), text: '\ndisinfection  ?' };
    return [
      {
        span: { line: finished.span.line, start: keyword.start, end: keyword.end },
        message: l10n.t(
          'the well is finished and its water is drunk, but no disinfection is logged; log it, or ask the crew',
        ),
        fixes: () => [fix(l10n.t('Ask the crew for the disinfection, with ?'), [end], { preferred: true })],
      },
    ];
  },
};
