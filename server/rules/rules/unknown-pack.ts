import * as l10n from '@vscode/l10n';
import type { TextField } from '../../model/log.ts';
import { packs } from '../../packs/index.ts';
import type { UnreadPack } from '../../packs/own-packs.ts';
import { overwrite } from '../fixes.ts';
import { didYouMean, orList, shortened } from '../messages.ts';
import { nearNames } from '../near-names.ts';
import type { Report, Rule } from '../rule.ts';

const unreadReport = ({ span }: TextField, { id, why }: UnreadPack): Report => ({
  span,
  message: l10n.t('the rule pack "{0}" cannot be read, so its limits are not checked: {1}', shortened(id), why),
});

const unknownText = (id: string, near: readonly string[], ids: readonly string[]): string =>
  near.length > 0
    ? `${l10n.t('there is no rule pack "{0}"', id)}${didYouMean(near)}`
    : l10n.t('there is no rule pack "{0}"; known are {1}', id, orList(ids));

function reportOf({ text, span }: TextField, ids: readonly string[]): Report {
  const near = nearNames(text, ids);
  return {
    span,
    message: unknownText(shortened(text), near, ids),
    fixes: () => near.map((id, index) => overwrite(span, id, { preferred: index === 0 })),
  };
}

/** A rule pack that nobody knows. */
export const rule: Rule = {
  id: 'unknown-pack',
  severity: 'error',
  title: 'A rule pack that is not known',
  why: 'The limits of a pack that is not known are not checked.',
  mend: 'Correct the name. Packs are a help for checking, not the law.',
  source: 'the packs that come with the program',
  flagged: [{ text: 'rules [[generl]]', fixed: 'rules general' }],
  silent: [{ text: 'rules general' }],
  check: ({ log, limits, ownPacks }) => {
    const own = [...(limits.packs ?? []), ...ownPacks.packs].map(({ id }) => id);
    const ids = [...new Set([...packs.map(({ id }) => id), ...own])];
    const known = new Set(ids.map((id) => id.toLowerCase()));
    return log.packs
      .filter(({ text }) => !known.has(text.toLowerCase()))
      .map((each) => {
        const unread = ownPacks.unread.find(({ id }) => id.toLowerCase() === each.text.toLowerCase());
        return unread ? unreadReport(each, unread) : reportOf(each, ids);
      });
  },
};
