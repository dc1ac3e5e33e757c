import type { Clause } from '../../packs/clause.ts';
import { packNamed } from '../../packs/index.ts';
import type { Pack } from '../../packs/limits.ts';
import { whenText } from '../../packs/words.ts';
import { escapeMarkdown, paragraphs } from '../markdown.ts';
import type { HoverSource } from './source.ts';

/** Where a limit stands, the date of that text, and whether it was read or remembered. */
export function limitSource({ source, section, date, known, uncertain }: Clause): string {
  const parts = [source, section, date === null ? null : `text of ${date}`, known === 'common practice' ? null : known];
  const where = parts.filter((part) => part !== null).join(', ');
  return escapeMarkdown(uncertain === null ? where : `${where}; not certain: ${uncertain}`);
}

const said = (name: string, clause: Clause): string =>
  `- ${escapeMarkdown(name)}: ${escapeMarkdown(clause.text)} (${limitSource(clause)})`;

const linesOf = (pack: Pack): readonly string[] => [
  ...Object.entries(pack.limits).map(([name, limit]) => said(name, limit)),
  ...pack.cases.map((each) => said(`${each.limit}, ${whenText(each.when)}`, each)),
  ...pack.due.map((each) => said(`${each.what} due`, each)),
  ...pack.record.map((each) => said('the record holds', each)),
  ...pack.distances.map((each) => said(`distance from ${each.from.join(', ')}`, each)),
  ...pack.numbers.map((each) => said(each.of, each)),
  ...(pack.testReadings === null ? [] : [said('test', pack.testReadings)]),
  ...pack.reminders.map((each) => said('look that', each)),
];

/** A rule pack: its notice and what it asks, each with its source. */
export const describePack = (pack: Pack): string =>
  paragraphs([
    `**${escapeMarkdown(pack.id)}**: ${escapeMarkdown(pack.title)}`,
    escapeMarkdown(pack.notice),
    linesOf(pack).join('\n'),
  ]);

/** The pack under the cursor on a `rules` line. */
export const hoverPack: HoverSource = ({ snapshot, at }) => {
  const named = snapshot.log.packs.find(
    ({ span }) => span.line === at.line && span.start <= at.column && at.column <= span.end,
  );
  const pack = named === undefined ? undefined : packNamed(named.text, snapshot.ownPacks.packs);
  if (named === undefined || pack === undefined) return null;
  return { start: named.span.start, end: named.span.end, markdown: describePack(pack) };
};
