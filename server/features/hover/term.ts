import * as l10n from '@vscode/l10n';
import type { ListId, Term } from '../../../grammar/terms/term.ts';
import type { Line } from '../../../grammar/tree.ts';
import { escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import { listTitle, type Word, wordsOf } from '../words.ts';
import type { HoverSource } from './source.ts';

const shortForms = (term: Term): string | null =>
  term.short.length === 0 ? null : l10n.t('Also written: {0}', escapeMarkdown(term.short.join(', ')));

const adjective = (term: Term): string | null =>
  term.ground?.adjective === undefined
    ? null
    : l10n.t('As a secondary material: {0}', escapeMarkdown(term.ground.adjective));

const kindOfGround = ({ ground }: Term): string | null => {
  if (ground === undefined || ground.class === 'unknown' || ground.class === 'void') return null;
  return ground.rock ? l10n.t('Counts as bedrock') : l10n.t('Counts as unconsolidated ground');
};

const heading = (list: ListId, term: Term): string =>
  `**${escapeMarkdown(term.name || term.id)}** (${escapeMarkdown(l10n.t(listTitle(list)).toLowerCase())})`;

/** A term with its meaning, its short forms and where it comes from. */
export const describeTerm = (list: ListId, term: Term): string =>
  paragraphs([
    heading(list, term),
    escapeMarkdown(term.meaning),
    lines([kindOfGround(term), adjective(term), shortForms(term), l10n.t('Source: {0}', escapeMarkdown(term.source))]),
  ]);

/** How the description that a short form stands in is read as a whole; null for a word that is written in full. */
function readAs(line: Line, { start, end, term }: Word): string | null {
  const written = line.text.slice(start, end).toLowerCase();
  if (written === term.name.toLowerCase() || written === term.ground?.adjective) return null;
  const held = line.items.find(({ value }) => value.kind === 'description' && value.start <= start && end <= value.end);
  return held?.value.kind === 'description' ? l10n.t('The line reads: {0}', escapeMarkdown(held.value.long)) : null;
}

/** The meaning of the term under the cursor. */
export const hoverTerm: HoverSource = ({ line, at }) => {
  const word = wordsOf(line).find((each) => touches(each, at.column));
  if (word === undefined) return null;
  const { start, end, list, term } = word;
  return { start, end, markdown: paragraphs([describeTerm(list, term), readAs(line, word)]) };
};
