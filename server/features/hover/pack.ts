import * as l10n from '@vscode/l10n';
import type { Clause } from '../../packs/clause.ts';
import { packNamed } from '../../packs/index.ts';
import { type LimitName, limitTable } from '../../packs/limit-names.ts';
import type { Pack } from '../../packs/limits.ts';
import { whenText } from '../../packs/words.ts';
import { codeSpan, escapeMarkdown, paragraphs } from '../markdown.ts';
import { touchesSpan } from '../position.ts';
import type { HoverSource } from './source.ts';

/** Where a limit stands, the date of that text, and whether it was read or remembered. */
function sourceOf({ source, section, date, known, uncertain }: Clause): string {
  const parts = [source, section, date === null ? null : `text of ${date}`, known === 'common practice' ? null : known];
  const where = parts.filter((part) => part !== null).join(', ');
  return escapeMarkdown(uncertain === null ? where : `${where}; not certain: ${uncertain}`);
}

/** What a clause says, where it stands, and a way there. Clauses stand in the words of their code. */
export function saidIn(clause: Clause): string {
  const link = clause.address === null ? '' : ` [${l10n.t('Read the section')}](${clause.address})`;
  return `${escapeMarkdown(clause.text)} (${sourceOf(clause)})${link}`;
}

const said = (name: string, clause: Clause): string => `- ${name}: ${saidIn(clause)}`;

/** A limit by its name and its meaning. */
export const limitText = (name: LimitName): string => `${codeSpan(name)}, ${escapeMarkdown(limitTable[name].meaning)}`;

const plain = (name: string, clause: Clause): string => said(escapeMarkdown(name), clause);

const linesOf = (pack: Pack): readonly string[] => [
  ...(Object.entries(pack.limits) as [LimitName, Clause][]).map(([name, limit]) => said(limitText(name), limit)),
  ...pack.cases.map((each) => said(`${limitText(each.limit)}, ${escapeMarkdown(whenText(each.when))}`, each)),
  ...pack.due.map((each) => plain(`${each.what} due`, each)),
  ...pack.record.map((each) => plain('the record holds', each)),
  ...pack.distances.map((each) => plain(`distance from ${each.from.join(', ')}`, each)),
  ...pack.numbers.map((each) => plain(each.of, each)),
  ...(pack.testReadings === null ? [] : [plain('test', pack.testReadings)]),
  ...pack.reminders.map((each) => plain('look that', each)),
];

/** A rule pack: its notice and what it asks, each with its source. */
export const describePack = (pack: Pack): string =>
  paragraphs([
    `**${escapeMarkdown(pack.id)}**: ${escapeMarkdown(pack.title)}`,
    escapeMarkdown(pack.notice),
    linesOf(pack).join('\n'),
  ]);

/** A pack of the workspace: what it asks, what that rests on, and whose it is. */
export const describeOwnPack = (pack: Pack): string =>
  paragraphs([
    describePack(pack),
    l10n.t('A pack of this workspace. It is a help for checking and not the law: whoever wrote it answers for it.'),
  ]);

/** The pack under the cursor on a `rules` line. */
export const hoverPack: HoverSource = ({ snapshot, line, at }) => {
  if (line.row !== 'rules') return null;
  const named = snapshot.log.packs.find(({ span }) => touchesSpan(span, at));
  const pack = named === undefined ? undefined : packNamed(named.text, snapshot.ownPacks.packs);
  if (named === undefined || pack === undefined) return null;
  const isOwn = snapshot.ownPacks.packs.includes(pack);
  return { start: named.span.start, end: named.span.end, markdown: isOwn ? describeOwnPack(pack) : describePack(pack) };
};
