import * as l10n from '@vscode/l10n';
import { packById } from '../packs/index.ts';
import type { Severity } from '../rules/rule.ts';
import { describePack } from './hover/pack.ts';
import { codeBlock, escapeMarkdown, paragraphs } from './markdown.ts';
import { ruleById } from './rules.ts';

const severityText = (severity: Severity): string =>
  ({
    error: l10n.t('error'),
    warning: l10n.t('warning'),
    information: l10n.t('information'),
    hint: l10n.t('hint'),
  })[severity];

/** A text behind its heading, which stands in bold. */
const headed = (heading: string, text: string): string => `**${heading}** ${text}`;

const examples = (title: string, given: readonly string[]): string | null =>
  given.length === 0 ? null : paragraphs([`## ${title}`, ...given.map(codeBlock)]);

/** A rule as a page in Markdown: why, what to do, its source, and what it reports and lets pass; null for one that does not exist. */
export function rulePage(id: string): string | null {
  const rule = ruleById(id);
  if (rule === undefined) return null;
  return paragraphs([
    `# ${escapeMarkdown(rule.id)}`,
    `**${escapeMarkdown(l10n.t(rule.title))}** (${severityText(rule.severity)})`,
    l10n.t(rule.why),
    headed(l10n.t('What to do.'), l10n.t(rule.mend)),
    rule.unfixed === undefined ? null : headed(l10n.t('No fix is offered.'), l10n.t(rule.unfixed)),
    rule.crew === undefined ? null : headed(l10n.t('Asked of the crew.'), l10n.t(rule.crew)),
    headed(l10n.t('Source.'), rule.source),
    l10n.t('To silence it for one line: `# allow {0}: reason`.', rule.id),
    examples(l10n.t('Reported, between the brackets'), rule.flaggedTexts),
    examples(l10n.t('Not reported'), rule.silentTexts),
  ]);
}

/** A pack of the program as a page in Markdown; null for one that does not exist. */
export function packPage(id: string): string | null {
  const pack = packById(id);
  return pack === undefined ? null : describePack(pack);
}
