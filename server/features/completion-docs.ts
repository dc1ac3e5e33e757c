import { rowById } from '../../grammar/table.ts';
import { packById } from '../packs/index.ts';
import type { About } from './completion/suggestion.ts';
import { describeRule } from './hover/allow.ts';
import { describeRow } from './hover/keyword.ts';
import { describePack } from './hover/pack.ts';
import { describeTerm } from './hover/term.ts';
import { termsOf } from './words.ts';

/** Markdown about a suggestion; null where there is nothing to say. */
export function describeSuggestion(about: About): string | null {
  if (about.kind === 'text') return about.markdown;
  if (about.kind === 'row') return describeRow(rowById(about.id));
  if (about.kind === 'rule') return describeRule(about.id);
  if (about.kind === 'pack') {
    const pack = packById(about.id);
    return pack === undefined ? null : describePack(pack);
  }
  const term = termsOf(about.list).find(({ id }) => id === about.id);
  return term === undefined ? null : describeTerm(about.list, term);
}
