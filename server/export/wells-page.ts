import { helpNotLaw } from '../drawing/cautions.ts';
import { element, section, textElement } from '../drawing/html.ts';
import { type CrewQuestion, questionListHtml } from './questions/index.ts';
import { htmlPage } from './record-page/page.ts';

/** One well of a page about several. Texts are plain, one for each column. */
export interface WellOnPage {
  readonly name: string;
  readonly file: string;
  readonly cells: readonly string[];
  readonly questions: readonly CrewQuestion[];
}

export interface WellsPage {
  readonly title: string;
  /** Today as YYYY-MM-DD. */
  readonly today: string;
  readonly columns: readonly string[];
  readonly wells: readonly WellOnPage[];
}

const rowOf = ({ cells: [first = '', ...rest] }: WellOnPage, columns: readonly string[]): string =>
  element(
    'tr',
    {},
    [
      textElement('th', { scope: 'row' }, first),
      ...rest.map((text, at) => textElement('td', { 'data-label': columns[at + 1] ?? '' }, text)),
    ].join(''),
  );

const tableOf = ({ columns, wells }: WellsPage): string =>
  element(
    'table',
    {},
    [
      textElement('caption', {}, 'The wells, each in the units of its own log'),
      element(
        'thead',
        {},
        element('tr', {}, columns.map((each) => textElement('th', { scope: 'col' }, each)).join('')),
      ),
      element('tbody', {}, wells.map((well) => rowOf(well, columns)).join('\n')),
    ].join('\n'),
  );

/** The questions of one well; nothing where there are none. */
function questionsOf({ name, file, questions }: WellOnPage, at: number): string[] {
  const list = questionListHtml(questions);
  if (list === null) return [];
  const from = textElement('p', { class: 'facts' }, `Log: ${file}. Numbers of lines are those of the log.`);
  return [section(`questions-${at + 1}`, `Questions for the crew: ${name}`, `${from}\n${list}`).html];
}

function headOf({ title, today, wells }: WellsPage): string {
  const facts = `Drawn up ${today}, ${wells.length} ${wells.length === 1 ? 'well' : 'wells'}. ${helpNotLaw}`;
  return element(
    'section',
    { 'data-section': 'head', 'aria-label': title },
    `\n${textElement('h1', {}, title)}\n${textElement('p', { class: 'facts' }, facts)}\n`,
  );
}

/** A table of wells, and below it what each crew is asked, as one HTML file. */
export const wellsHtml = (page: WellsPage): string =>
  htmlPage(page.title, [
    headOf(page),
    section('wells', 'Wells', tableOf(page)).html,
    ...page.wells.flatMap(questionsOf),
  ]);
