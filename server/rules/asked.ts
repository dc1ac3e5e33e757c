import * as l10n from '@vscode/l10n';
import type { Clause } from '../packs/clause.ts';
import type { LimitInForce } from '../packs/limits.ts';

/** What a pack says, as a message names it: `60 days (montana-36-21)`, and whether that figure is only remembered. */
export const saidBy = ({ text, known, uncertain, section }: Clause, pack: string): string =>
  `${text} (${[
    pack,
    section,
    known === 'remembered' ? l10n.t('from memory') : null,
    uncertain === null ? null : l10n.t('reading not certain'),
  ]
    .filter((part) => part !== null)
    .join(', ')})`;

/** A limit as a message names it: `6 m (ontario-903)`. */
export const askedText = (limit: LimitInForce): string => saidBy(limit, limit.pack);
