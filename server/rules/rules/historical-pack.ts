import * as l10n from '@vscode/l10n';
import type { TextField } from '../../model/log.ts';
import type { Pack } from '../../packs/limits.ts';
import type { Report, Rule } from '../rule.ts';

const nowhere = { line: 0, start: 0, end: 0 };

const reportOf = ({ id, title }: Pack, named: readonly TextField[]): Report => ({
  span: named.find(({ text }) => text.toLowerCase() === id)?.span ?? nowhere,
  message: l10n.t(
    '{0} ({1}) has been replaced by another text: it tells how older wells were judged, and no well passes by it; name the pack that is in force, and ask the authority',
    id,
    title,
  ),
});

/** A pack whose text has been replaced. */
export const rule: Rule = {
  id: 'historical-pack',
  severity: 'error',
  title: 'A pack whose text has been replaced',
  why: 'A well that keeps to a text no longer in force has kept to nothing that an office will look at.',
  mend: 'Name the pack in force. Keep the old one only to read an old well, and allow this with the reason.',
  source: 'the pack says so of itself',
  unfixed: 'Which text is in force is for the authority to say.',
  flagged: [{ text: 'rules [[quebec-q2-r6]]' }, { text: 'rules general [[Quebec-Q2-R6]]' }],
  silent: [{ text: 'rules general' }, { text: 'rules montana-36-21' }],
  check: ({ log, limits }) =>
    (limits.packs ?? []).filter(({ state }) => state === 'replaced').map((pack) => reportOf(pack, log.packs)),
};
