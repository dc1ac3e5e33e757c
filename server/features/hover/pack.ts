import * as l10n from '@vscode/l10n';
import type { Clause } from '../../packs/clause.ts';
import { packNamed } from '../../packs/index.ts';
import { type LimitName, limitTable } from '../../packs/limit-names.ts';
import type { Pack } from '../../packs/limits.ts';
import { whenText } from '../../packs/words.ts';
import { codeSpan, escapeMarkdown, paragraphs } from '../markdown.ts';
import { touchesSpan } from '../position.ts';
import type { HoverSource } from './source.ts';

/** What is common practice says so as its source. */
const knownText: Readonly<Record<Clause['known'], () => string | null>> = {
  read: () => l10n.t('read'),
  remembered: () => l10n.t('remembered'),
  'common practice': () => null,
};

const dueText: Readonly<Record<Pack['due'][number]['what'], () => string>> = {
  record: () => l10n.t('record due'),
  'copy for the owner': () => l10n.t('copy for the owner due'),
  'plugging report': () => l10n.t('plugging report due'),
};

/** Where a limit stands, the date of that text, and whether it was read or remembered. */
function sourceOf({ source, section, date, known, uncertain }: Clause): string {
  const parts = [source, section, date === null ? null : l10n.t('text of {0}', date), knownText[known]()];
  const where = parts.filter((part) => part !== null).join(', ');
  return escapeMarkdown(uncertain === null ? where : l10n.t('{0}; not certain: {1}', where, uncertain));
}

/** What a clause says, where it stands, and a way there. Clauses stand in the words of their code. */
export function saidIn(clause: Clause): string {
  const link = clause.address === null ? '' : ` [${l10n.t('Read the section')}](${clause.address})`;
  return `${escapeMarkdown(clause.text)} (${sourceOf(clause)})${link}`;
}

const said = (name: string, clause: Clause): string => `- ${name}: ${saidIn(clause)}`;

/** A limit by its name and its meaning. */
export const limitText = (name: LimitName): string =>
  `${codeSpan(name)}, ${escapeMarkdown(l10n.t(limitTable[name].meaning))}`;

const plain = (name: string, clause: Clause): string => said(escapeMarkdown(name), clause);

const linesOf = (pack: Pack): readonly string[] => [
  ...(Object.entries(pack.limits) as [LimitName, Clause][]).map(([name, limit]) => said(limitText(name), limit)),
  ...pack.cases.map((each) => said(`${limitText(each.limit)}, ${escapeMarkdown(whenText(each.when))}`, each)),
  ...pack.due.map((each) => plain(dueText[each.what](), each)),
  ...pack.record.map((each) => plain(l10n.t('the record holds'), each)),
  ...pack.distances.map((each) => plain(l10n.t('distance from {0}', each.from.join(', ')), each)),
  ...pack.numbers.map((each) => plain(l10n.t(each.of), each)),
  ...(pack.testReadings === null ? [] : [plain(l10n.t('test'), pack.testReadings)]),
  ...pack.reminders.map((each) => plain(l10n.t('look that'), each)),
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
