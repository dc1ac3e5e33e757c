import type { Columns } from '../../../grammar/span.ts';
import type { Figure } from '../../record/record.ts';
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

/** A computed figure: result, formula, the numbers put in, its source, its caution. */
const describeKnown = (figure: Figure): string =>
  lines([
    `**${escapeMarkdown(figure.title)}**: ${resultText(figure)}${figure.doubtful ? ' (rests on a doubtful value)' : ''}`,
    codeSpan(figure.formula),
    inputsLine(figure),
    `Source: ${escapeMarkdown(figure.source)}`,
    figure.caution === null ? null : `Caution: ${escapeMarkdown(figure.caution)}`,
  ]);

const describeWaiting = ({ title, waitsFor }: Figure): string =>
  `**${escapeMarkdown(title)}**: not known; waits for ${escapeMarkdown(waitsFor.join('; ') || 'a fact')}`;

const describeFigures = (figures: readonly Figure[]): string =>
  paragraphs([
    ...figures.filter(({ value }) => value !== null).map(describeKnown),
    lines(figures.filter(({ value }) => value === null).map(describeWaiting)),
  ]);

const figuresOfLine = ({ snapshot, at }: HoverPlace): readonly Figure[] =>
  snapshot.record.figures.filter((figure) => (figure.span?.line ?? figure.lines[0]) === at.line);

const leadOf = ({ line }: HoverPlace): Columns | null => line.keyword ?? line.depths;

/** True for a figure of a single value of the line, not of the line as a whole. */
const isOf = ({ span }: Figure, lead: Columns, column: number): boolean =>
  span !== null && touches(span, column) && span.start >= lead.end;

/** The figures worked out for the line, at what the line begins with; elsewhere those of the value under the cursor. */
export const hoverFigures: HoverSource = (place): HoverPart | null => {
  const lead = leadOf(place);
  if (lead === null) return null;
  const atLead = touches(lead, place.at.column);
  const figures = figuresOfLine(place).filter((figure) => atLead || isOf(figure, lead, place.at.column));
  if (figures.length === 0) return null;
  const { start, end } = atLead ? lead : (figures[0]?.span ?? lead);
  return { start, end, markdown: describeFigures(figures) };
};
