import type { Figure, FigureInput } from '../record/record.ts';
import { faultedLines, type Noticed } from './findings-html.ts';
import { element, fromLine, lineName, textElement } from './html.ts';
import { capital } from './words.ts';

const columns = ['Figure', 'Result', 'In other units', 'Check', 'Formula and what was put in', 'Source'];

const inputText = (input: FigureInput): string => `${input.name} = ${input.text}`;

/** How far a figure can be relied on, with what is said of it. */
export type FigureCheck = 'agrees' | 'finding' | 'doubtful' | 'waits';

/** The mark of a figure; the first that holds: it waits for a fact, a check spoke of its lines, it rests on a doubtful value. */
function checkOf(figure: Figure, faulted: ReadonlySet<number>): FigureCheck {
  if (figure.waitsFor.length > 0) return 'waits';
  if (figure.lines.some((line) => faulted.has(line))) return 'finding';
  return figure.doubtful ? 'doubtful' : 'agrees';
}

/** A figure with its mark. */
export interface CheckedFigure {
  readonly figure: Figure;
  readonly check: FigureCheck;
}

/** What the marks look like, and what each means. */
const checkWords: Readonly<{ [C in FigureCheck]: { readonly mark: string; readonly meaning: string } }> = {
  agrees: { mark: '✓ sound', meaning: 'complete, and no rule objects to a line that it rests on' },
  finding: { mark: '! finding', meaning: 'a rule objects to a line that it rests on: see the findings' },
  doubtful: { mark: '? doubtful', meaning: 'rests on a value that the notes give as approximate or doubtful' },
  waits: { mark: '… waits', meaning: 'waits for a fact that the notes lack' },
};

const waitsHtml = (figure: Figure): string =>
  figure.waitsFor.length === 0 ? '' : textElement('p', { class: 'waits' }, `Waits for ${figure.waitsFor.join(', ')}`);

const inputsHtml = (figure: Figure): string =>
  figure.inputs.length === 0
    ? ''
    : element('ul', {}, figure.inputs.map((input) => textElement('li', {}, inputText(input))).join(''));

const cautionHtml = ({ caution }: Figure): string =>
  caution === null ? '' : textElement('p', { class: 'caution' }, `Caution: ${caution}`);

export const checkMarkHtml = (check: FigureCheck): string =>
  textElement('span', { class: 'check' }, checkWords[check].mark);

function figureHtml({ figure, check }: CheckedFigure): string {
  const cell = (label: number, inner: string, more = {}) =>
    element('td', { 'data-label': columns[label] ?? null, ...more }, inner);
  const line = figure.lines[0] ?? null;
  return element(
    'tr',
    { ...fromLine(line), 'data-figure': figure.id, 'data-check': check },
    [
      element('th', { scope: 'row' }, lineName(line, capital(figure.title), true)),
      cell(1, textElement('span', {}, figure.text || '?'), { class: 'number' }),
      cell(2, textElement('span', {}, figure.otherText), { class: 'number' }),
      cell(3, checkMarkHtml(check)),
      cell(4, textElement('p', {}, figure.formula) + inputsHtml(figure) + waitsHtml(figure) + cautionHtml(figure)),
      cell(5, textElement('span', {}, figure.source)),
    ].join(''),
  );
}

/** What the marks mean. */
export const checkLegendHtml = (): string =>
  element(
    'ul',
    { class: 'checks' },
    Object.entries(checkWords)
      .map(([check, { mark, meaning }]) =>
        element(
          'li',
          { 'data-check': check },
          `${textElement('span', { class: 'check' }, mark)} ${textElement('span', {}, meaning)}`,
        ),
      )
      .join(''),
  );

/** Each figure with its mark, the findings being what they are. */
export const checkedFigures = (figures: readonly Figure[], findings: readonly Noticed[]): CheckedFigure[] => {
  const faulted = faultedLines(findings);
  return figures.map((figure) => ({ figure, check: checkOf(figure, faulted) }));
};

/**
 * The computed figures, each with its check mark, its formula, the numbers put in, its source, what it waits for, and the
 * caution that goes with it.
 */
export function figuresHtml(figures: readonly CheckedFigure[]): string {
  const heads = columns.map((title) => textElement('th', { scope: 'col' }, title)).join('');
  const rows = figures.map(figureHtml).join('\n');
  const table = element(
    'table',
    { class: 'figures' },
    `\n<caption>Figures computed from the log</caption>\n<thead><tr>${heads}</tr></thead>\n<tbody>\n${rows}\n</tbody>\n`,
  );
  return `${checkLegendHtml()}\n${table}`;
}
