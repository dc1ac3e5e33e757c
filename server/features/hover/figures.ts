import type { Columns } from '../../../grammar/span.ts';
import type { Figure } from '../../record/record.ts';
import { figuresAt } from '../figures.ts';
import { codeSpan, escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import type { HoverPart, HoverPlace, HoverSource } from './source.ts';

type Input = Figure['inputs'][number];

const inputText = ({ name, text, line }: Input): string =>
  `${escapeMarkdown(name)} ${escapeMarkdown(text)}${line === null ? '' : ` (line ${line + 1})`}`;

const inputsLine = ({ inputs }: Figure): string | null =>
  inputs.length === 0 ? null : `with ${inputs.map(inputText).join('; ')}`;

const resultText = ({ text, otherText }: Figure): string =>
  [text, otherText].filter(Boolean).map(escapeMarkdown).join(' = ');

const doubtText = ({ doubtful }: Figure): string => (doubtful ? ' (rests on a doubtful value)' : '');

const answerOf = (figure: Figure): string =>
  figure.value === null
    ? `not known; waits for ${escapeMarkdown(figure.waitsFor.join(', ') || 'a fact')}`
    : `${resultText(figure)}${doubtText(figure)}`;

/** A figure as the calculation sheet has it: result, formula, the numbers put in, its source, its caution. */
const describe = (figure: Figure): string =>
  lines([
    `**${escapeMarkdown(figure.title)}**: ${answerOf(figure)}`,
    codeSpan(figure.formula),
    inputsLine(figure),
    figure.source === '' ? null : `Source: ${escapeMarkdown(figure.source)}`,
    figure.caution === null ? null : `Caution: ${escapeMarkdown(figure.caution)}`,
  ]);

/** Those that are known first. */
const describeFigures = (figures: readonly Figure[]): string =>
  paragraphs([
    ...figures.filter(({ value }) => value !== null).map(describe),
    ...figures.filter(({ value }) => value === null).map(describe),
  ]);

const leadOf = ({ line }: HoverPlace): Columns | null => line.keyword ?? line.depths;

/** True for a figure of a single value of the line, not of the line as a whole. */
const isOf = ({ span }: Figure, lead: Columns, column: number): boolean =>
  span !== null && touches(span, column) && span.start >= lead.end;

/** The figures worked out for the line, at what the line begins with; elsewhere those of the value under the cursor. */
export const hoverFigures: HoverSource = (place): HoverPart | null => {
  const lead = leadOf(place);
  if (lead === null) return null;
  const atLead = touches(lead, place.at.column);
  const figures = figuresAt(place.snapshot.record, place.at.line).filter(
    (figure) => atLead || isOf(figure, lead, place.at.column),
  );
  if (figures.length === 0) return null;
  const { start, end } = atLead ? lead : (figures[0]?.span ?? lead);
  return { start, end, markdown: describeFigures(figures) };
};
