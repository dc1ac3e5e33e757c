import * as l10n from '@vscode/l10n';
import type { Columns } from '../../../grammar/span.ts';
import type { Figure } from '../../record/record.ts';
import {
  factsAwaited,
  figureCaution,
  figureFormula,
  figureOtherText,
  figureText,
  figureTitle,
  inputName,
} from '../figure-words.ts';
import { figuresAt } from '../figures.ts';
import { codeSpan, escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import type { HoverPart, HoverPlace, HoverSource } from './source.ts';

type Input = Figure['inputs'][number];

function inputText(input: Input): string {
  const said = `${escapeMarkdown(inputName(input))} ${escapeMarkdown(input.text)}`;
  return input.line === null ? said : l10n.t('{0} (line {1})', said, input.line + 1);
}

const inputsLine = ({ inputs }: Figure): string | null =>
  inputs.length === 0 ? null : l10n.t('with {0}', inputs.map(inputText).join('; '));

const resultText = (figure: Figure): string =>
  [figureText(figure), figureOtherText(figure)].filter(Boolean).map(escapeMarkdown).join(' = ');

function answerOf(figure: Figure): string {
  if (figure.value !== null)
    return figure.doubtful ? l10n.t('{0} (rests on a doubtful value)', resultText(figure)) : resultText(figure);
  const facts = factsAwaited(figure);
  return l10n.t('not known; waits for {0}', escapeMarkdown(facts.length === 0 ? l10n.t('a fact') : facts.join(', ')));
}

const sourceLine = ({ source }: Figure): string | null =>
  source === '' ? null : l10n.t('Source: {0}', escapeMarkdown(source));

const cautionLine = (figure: Figure): string | null => {
  const caution = figureCaution(figure);
  return caution === null ? null : l10n.t('Caution: {0}', escapeMarkdown(caution));
};

/** A figure as the calculation sheet has it: result, formula, the numbers put in, its source, its caution. */
const describe = (figure: Figure): string =>
  lines([
    `**${escapeMarkdown(figureTitle(figure))}**: ${answerOf(figure)}`,
    codeSpan(figureFormula(figure)),
    inputsLine(figure),
    sourceLine(figure),
    cautionLine(figure),
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
