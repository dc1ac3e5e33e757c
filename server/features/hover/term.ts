import type { ListId, Term } from '../../../grammar/terms/term.ts';
import { escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import { listTitle, wordsOf } from '../words.ts';
import type { HoverSource } from './source.ts';

const shortForms = (term: Term): string | null =>
  term.short.length === 0 ? null : `Also written: ${term.short.map(escapeMarkdown).join(', ')}`;

const adjective = (term: Term): string | null =>
  term.ground?.adjective === undefined ? null : `As a secondary material: ${escapeMarkdown(term.ground.adjective)}`;

/** A term with its meaning, its short forms and where it comes from. */
export const describeTerm = (list: ListId, term: Term): string =>
  paragraphs([
    `**${escapeMarkdown(term.name)}** (${escapeMarkdown(listTitle(list).toLowerCase())})`,
    escapeMarkdown(term.meaning),
    lines([adjective(term), shortForms(term), `Source: ${escapeMarkdown(term.source)}`]),
  ]);

/** The meaning of the term under the cursor. */
export const hoverTerm: HoverSource = ({ line, at }) => {
  const word = wordsOf(line).find((each) => touches(each, at.column));
  return word === undefined ? null : { start: word.start, end: word.end, markdown: describeTerm(word.list, word.term) };
};
