import { cautionsOf, helpNotLaw } from '../drawing/cautions.ts';
import { recordTables } from '../drawing/tables/record-tables.ts';
import { wellName } from '../drawing/title.ts';
import { capital } from '../drawing/words.ts';
import { dueText } from '../record/due.ts';
import type { Figure, FigureInput, Record as WellRecord } from '../record/record.ts';
import { heading, oneLine, tableText } from './plain-text.ts';

function inputText(input: FigureInput): string {
  const place = input.line === null ? '' : ` (line ${input.line + 1})`;
  return `      ${oneLine(`${input.name} = ${input.text}`)}${place}`;
}

function resultText(figure: Figure): string {
  const other = figure.otherText === '' ? '' : ` (${figure.otherText})`;
  return oneLine(`${figure.text || '?'}${other}${figure.doubtful ? ', rests on a doubtful value' : ''}`);
}

/** One figure: result, formula, the numbers put in, source, and what it waits for. */
function figureText(figure: Figure): string {
  return [
    `  ${oneLine(capital(figure.title))}: ${resultText(figure)}`,
    `    ${oneLine(figure.id)}`,
    `    ${oneLine(figure.formula)}`,
    ...figure.inputs.map(inputText),
    ...(figure.source === '' ? [] : [`    Source: ${oneLine(figure.source)}`]),
    ...(figure.waitsFor.length === 0 ? [] : [`    Waits for ${oneLine(figure.waitsFor.join(', '))}`]),
    ...(figure.caution === null ? [] : [`    Caution: ${oneLine(figure.caution)}`]),
  ].join('\n');
}

const figuresText = ({ figures }: WellRecord): string[] =>
  figures.length === 0 ? [] : [heading('Computed figures', '-'), ...figures.map(figureText)];

function cautionsText({ figures }: WellRecord): string[] {
  const cautions = cautionsOf(figures).map((caution) => `  ${oneLine(caution.text)}`);
  return cautions.length === 0 ? [] : [heading('Cautions', '-'), cautions.join('\n')];
}

function dueLines({ due }: WellRecord, today: string | null): string[] {
  const lines = due.map((each) => `  ${oneLine(capital(dueText(each, today)))}`);
  return lines.length === 0 ? [] : [heading('When it is due', '-'), lines.join('\n')];
}

/** What nobody wrote down and what is in doubt, each with its line. */
function questionsText({ log }: WellRecord): string[] {
  const questions = log.questions.map(({ span, what, kind }) => `  line ${span.line + 1}: ${oneLine(what)} (${kind})`);
  return questions.length === 0 ? [] : [heading('Questions for the crew', '-'), questions.join('\n')];
}

/**
 * The record as plain text: tables in the order of a well record, then what is due, the calculation sheet, the cautions
 * and the questions. `today` is YYYY-MM-DD; without it no days are counted.
 */
export function recordText(record: WellRecord, today: string | null = null): string {
  const tables = recordTables(record.log).flatMap(({ title, tables: each }) => [
    heading(title, '-'),
    ...each.map(tableText),
  ]);
  const parts = [
    helpNotLaw,
    heading(oneLine(`Record of ${wellName(record.log.header)}`), '='),
    ...tables,
    ...dueLines(record, today),
    ...figuresText(record),
    ...cautionsText(record),
    ...questionsText(record),
  ];
  return `${parts.join('\n\n')}\n`;
}
