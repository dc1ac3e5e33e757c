import { packById } from '../packs/index.ts';
import { describePack } from './hover/pack.ts';
import { codeBlock, escapeMarkdown, paragraphs } from './markdown.ts';
import { ruleById } from './rules.ts';

const examples = (title: string, given: readonly string[]): string | null =>
  given.length === 0 ? null : paragraphs([`## ${title}`, ...given.map(codeBlock)]);

/** A rule as a page in Markdown: why, what to do, its source, and what it reports and lets pass; null for one that does not exist. */
export function rulePage(id: string): string | null {
  const rule = ruleById(id);
  if (rule === undefined) return null;
  return paragraphs([
    `# ${escapeMarkdown(rule.id)}`,
    `**${escapeMarkdown(rule.title)}** (${rule.severity})`,
    rule.why,
    `**What to do.** ${rule.mend}`,
    rule.unfixed === undefined ? null : `**No fix is offered.** ${rule.unfixed}`,
    rule.crew === undefined ? null : `**Asked of the crew.** ${rule.crew}`,
    `**Source.** ${rule.source}`,
    `To silence it for one line: \`# allow ${rule.id}: reason\`.`,
    examples('Reported, between the brackets', rule.flaggedTexts),
    examples('Not reported', rule.silentTexts),
  ]);
}

/** A pack of the program as a page in Markdown; null for one that does not exist. */
export function packPage(id: string): string | null {
  const pack = packById(id);
  return pack === undefined ? null : describePack(pack);
}
