import { type Caution, cautionsOf } from '../../drawing/cautions.ts';
import { type CheckedFigure, checkLegendHtml, checkMarkHtml } from '../../drawing/figures-html.ts';
import { element, textElement } from '../../drawing/html.ts';
import { capital } from '../../drawing/words.ts';
import type { Figure } from '../../record/record.ts';

const letters = 'abcdefghijklmnopqrstuvwxyz';

/** What the n-th caution is called: a to z, then aa, ab … */
export const cautionLetter = (n: number): string =>
  (n < letters.length ? '' : cautionLetter(Math.floor(n / letters.length) - 1)) + (letters[n % letters.length] ?? '');

const head = (...titles: readonly string[]): string =>
  `<thead><tr>${titles.map((title) => textElement('th', { scope: 'col' }, title)).join('')}</tr></thead>`;

const table = (caption: string, heads: string, rows: readonly string[], kind: string): string =>
  element(
    'table',
    { class: kind },
    `\n${textElement('caption', {}, caption)}\n${heads}\n<tbody>\n${rows.join('\n')}\n</tbody>\n`,
  );

function resultHtml({ text, otherText }: Figure): string {
  const other = otherText === '' ? '' : ` ${textElement('span', { class: 'other' }, `(${otherText})`)}`;
  return textElement('span', {}, text || '?') + other;
}

function rowHtml({ figure, check }: CheckedFigure, cautions: readonly Caution[]): string {
  const caution = cautions.findIndex(({ text }) => text === figure.caution);
  const waits = figure.waitsFor.length === 0 ? '' : ` for ${figure.waitsFor.join(', ')}`;
  return element(
    'tr',
    { 'data-figure': figure.id, 'data-check': check },
    [
      textElement('th', { scope: 'row' }, capital(figure.title)),
      element('td', { class: 'number', 'data-label': 'Result' }, resultHtml(figure)),
      element('td', { 'data-label': 'Check' }, checkMarkHtml(check) + textElement('span', { class: 'waits' }, waits)),
      textElement('td', { 'data-label': 'Caution' }, caution < 0 ? '' : cautionLetter(caution)),
    ].join(''),
  );
}

/** The figures with their check marks, and right under them the cautions that go with them, by letter. */
export function figuresWithCautions(figures: readonly CheckedFigure[]): string {
  const cautions = cautionsOf(figures.map(({ figure }) => figure));
  const rows = figures.map((each) => rowHtml(each, cautions));
  const items = cautions.map(({ text }, n) =>
    element('li', {}, `${textElement('strong', {}, cautionLetter(n))} ${textElement('span', {}, text)}`),
  );
  return [
    checkLegendHtml(),
    table('Figures computed from the log', head('Figure', 'Result', 'Check', 'Caution'), rows, 'figures'),
    textElement('h3', {}, 'Cautions that go with the figures'),
    items.length === 0 ? '' : element('ul', { class: 'cautions' }, `\n${items.join('\n')}\n`),
  ].join('\n');
}

const reckoningRow = (figure: Figure): string =>
  element(
    'tr',
    {},
    [
      textElement('th', { scope: 'row' }, `${capital(figure.title)}: ${figure.text || '?'}`),
      textElement('td', { 'data-label': 'Formula' }, figure.formula),
      textElement(
        'td',
        { 'data-label': 'Put in' },
        figure.inputs.map(({ name, text }) => `${name} = ${text}`).join('; '),
      ),
      textElement('td', { 'data-label': 'Source' }, figure.source),
    ].join(''),
  );

/** How each figure was reckoned: formula, the numbers put in, and where the formula is from. */
export const reckoning = (figures: readonly Figure[]): string =>
  table(
    'Formula, numbers and source of each figure',
    head('Figure', 'Formula', 'Put in', 'Source'),
    figures.map(reckoningRow),
    'reckoning',
  );
