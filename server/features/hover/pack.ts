import type { Clause } from '../../packs/clause.ts';
import { packById } from '../../packs/index.ts';
import type { Limit, Pack } from '../../packs/limits.ts';
import { escapeMarkdown, paragraphs } from '../markdown.ts';
import type { HoverSource } from './source.ts';

/** Where a limit stands, the date of that text, and whether it was read or remembered. */
export function limitSource({ source, section, date, known }: Clause): string {
  const parts = [source, section, date === null ? null : `text of ${date}`, known === 'common practice' ? null : known];
  return escapeMarkdown(parts.filter((part) => part !== null).join(', '));
}

const limitLine = ([name, limit]: [string, Limit]): string =>
  `- ${escapeMarkdown(name)}: ${escapeMarkdown(limit.text)} (${limitSource(limit)})`;

/** A rule pack: its notice and its limits, each with its source. */
export const describePack = (pack: Pack): string =>
  paragraphs([
    `**${escapeMarkdown(pack.id)}**: ${escapeMarkdown(pack.title)}`,
    escapeMarkdown(pack.notice),
    Object.entries(pack.limits).map(limitLine).join('\n'),
  ]);

/** The pack under the cursor on a `rules` line. */
export const hoverPack: HoverSource = ({ snapshot, at }) => {
  const named = snapshot.log.packs.find(
    ({ span }) => span.line === at.line && span.start <= at.column && at.column <= span.end,
  );
  const pack = named === undefined ? undefined : packById(named.text);
  if (named === undefined || pack === undefined) return null;
  return { start: named.span.start, end: named.span.end, markdown: describePack(pack) };
};
