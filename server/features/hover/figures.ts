import type { Figure } from '../../record/record.ts';
import { codeSpan, escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import type { HoverPart, HoverPlace, HoverSource } from './source.ts';

type Input = Figure['inputs'][number];

const inputText = ({ name, text, line }: Input): string =>
  `${escapeMarkdown(name)} ${escapeMarkdown(text)}${line === null ? '' : ` (line ${line + 1})`}`;

const inputsLine = ({ inputs }: Figure): string | null =>
  inputs.length === 0 ? null : `with ${inputs.map(inputText).join('; ')}`;

const resultText = ({ value, text, otherText }: Figure): string =>
  value === null ? 'not known yet' : [text, otherText].filter(Boolean).map(escapeMarkdown).join(' = ');

const waitsLine = ({ waitsFor }: Figure): string | null =>
  waitsFor.length === 0 ? null : `Waits for: ${waitsFor.map(escapeMarkdown).join('; ')}`;

/** A computed figure: result, formula, the numbers put in, what it waits for, its source, its caution. */
export const describeFigure = (figure: Figure): string =>
  lines([
    `**${escapeMarkdown(figure.title)}**: ${resultText(figure)}${figure.doubtful ? ' (rests on a doubtful value)' : ''}`,
    codeSpan(figure.formula),
    inputsLine(figure),
    waitsLine(figure),
    `Source: ${escapeMarkdown(figure.source)}`,
    figure.caution === null ? null : `Caution: ${escapeMarkdown(figure.caution)}`,
  ]);

const figuresOfLine = ({ snapshot, at }: HoverPlace): readonly Figure[] =>
  snapshot.record.figures.filter((figure) => (figure.span?.line ?? figure.lines[0]) === at.line);

const leadOf = ({ line }: HoverPlace): { start: number; end: number } | null => line.keyword ?? line.depths;

/** The figures worked out for the line, at what the line begins with; elsewhere those of the value under the cursor. */
export const hoverFigures: HoverSource = (place): HoverPart | null => {
  const lead = leadOf(place);
  if (lead === null) return null;
  const atLead = touches(lead, place.at.column);
  const own = (figure: Figure) => figure.span !== null && touches(figure.span, place.at.column);
  const figures = figuresOfLine(place).filter((figure) => atLead || own(figure));
  if (figures.length === 0) return null;
  const { start, end } = atLead ? lead : (figures[0]?.span ?? lead);
  return { start, end, markdown: paragraphs(figures.map(describeFigure)) };
};
