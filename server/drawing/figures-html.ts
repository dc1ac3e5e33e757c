import type { Figure, FigureInput } from '../record/record.ts';
import { element, fromLine, textElement } from './html.ts';
import { capital } from './words.ts';

const columns = ['Figure', 'Result', 'In other units', 'Formula and what was put in', 'Source'];

const inputText = (input: FigureInput): string => `${input.name} = ${input.text}`;

const resultText = (figure: Figure): string =>
  `${figure.text || '?'}${figure.doubtful ? ' (rests on a doubtful value)' : ''}`;

function waitsHtml(figure: Figure): string {
  return figure.waitsFor.length === 0
    ? ''
    : textElement('p', { class: 'waits' }, `Waits for ${figure.waitsFor.join(', ')}`);
}

const inputsHtml = (figure: Figure): string =>
  figure.inputs.length === 0
    ? ''
    : element('ul', {}, figure.inputs.map((input) => textElement('li', {}, inputText(input))).join(''));

const figureHtml = (figure: Figure, reachable: boolean): string =>
  element(
    'tr',
    { ...fromLine(figure.lines[0] ?? null, reachable), 'data-figure': figure.id },
    [
      textElement('th', { scope: 'row' }, capital(figure.title)),
      textElement('td', { class: 'number' }, resultText(figure)),
      textElement('td', { class: 'number' }, figure.otherText),
      element('td', {}, textElement('p', {}, figure.formula) + inputsHtml(figure) + waitsHtml(figure)),
      textElement('td', {}, figure.source),
    ].join(''),
  );

/** The computed figures, each with its formula, the numbers put in, its source and what it waits for. */
export function figuresHtml(figures: readonly Figure[], reachable: boolean): string {
  const heads = columns.map((title) => textElement('th', { scope: 'col' }, title)).join('');
  const rows = figures.map((figure) => figureHtml(figure, reachable)).join('\n');
  return element(
    'table',
    {},
    `\n<caption>Figures computed from the log</caption>\n<thead><tr>${heads}</tr></thead>\n<tbody>\n${rows}\n</tbody>\n`,
  );
}
