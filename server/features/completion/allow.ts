import * as l10n from '@vscode/l10n';
import type { Finding } from '../../rules/rule.ts';
import type { CompletionPlace } from './place.ts';
import { plain, type SuggestionSource } from './suggestion.ts';

const beforeRule = /#\s*allow\s+(?:[a-z-]+[\s,]+)*$/i;
const beginning = /#\s*$/;

const speaksOf = (place: CompletionPlace): readonly number[] => {
  const alone = /^\s*#/.test(place.before);
  return alone ? [place.at.line, place.at.line + 1] : [place.at.line];
};

function rulesHere(place: CompletionPlace): readonly string[] {
  const lines = speaksOf(place);
  const here = ({ span }: Finding) => lines.includes(span.line);
  return [...new Set(place.snapshot.findings.filter(here).map(({ rule }) => rule))];
}

/** After `# allow`, the rules that speak of this line; after `#`, the word itself where one does. */
export const suggestAllow: SuggestionSource = (place) => {
  if (beforeRule.test(place.lead)) {
    return rulesHere(place).map((id) => plain('rule', id, '', { insert: `${id}: `, about: { kind: 'rule', id } }));
  }
  if (!beginning.test(place.lead) || rulesHere(place).length === 0) return [];
  return [plain('keyword', 'allow', l10n.t('silence a rule on this line, with a reason'), { insert: 'allow ' })];
};
