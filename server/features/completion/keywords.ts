import * as l10n from '@vscode/l10n';
import { remembered } from '../../../grammar/remembered.ts';
import { isStringSection, type Row, rowsUnder, table } from '../../../grammar/table.ts';
import { snippetOf, type Template, templates } from '../../../grammar/templates.ts';
import { unitById } from '../../../grammar/units.ts';
import { knowsDates } from './dates.ts';
import { knowsHeadValues } from './head-values.ts';
import { missingSections } from './next-sections.ts';
import { type CompletionPlace, openingLine } from './place.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

const repeatable = new Set(['note', 'distance', 'shift', 'existing', 'photo']);

const depthsOf: Readonly<Record<Row['depths'], string>> = {
  none: '',
  interval: `\${1:?} - \${2:?} `,
  depth: `\${1:?} `,
  either: `\${1:?} `,
  optional: '',
};

function snippetOfRow(row: Row, keyword: string): string {
  if (row.where === 'section' && row.lines !== null && row.slots.length === 0) return `${keyword}\n  $0`;
  return `${keyword} ${depthsOf[row.depths]}$0`;
}

const keywordOf = remembered((row: Row): Suggestion => {
  const keyword = row.keywords[0] ?? row.id;
  return plain('keyword', keyword, l10n.t(row.doc), {
    insert: snippetOfRow(row, keyword),
    snippet: true,
    filter: row.keywords.join(' '),
    about: { kind: 'row', id: row.id },
  });
});

const suggestionOf = (row: Row, place: CompletionPlace): Suggestion => {
  const opens = row.depths === 'none' && (knowsHeadValues(row, place) || knowsDates(row, place));
  return opens ? { ...keywordOf(row), opens } : keywordOf(row);
};

const wholeIn = (template: Template, system: 'metric' | 'us'): Suggestion =>
  plain('template', l10n.t(template.title), l10n.t('as a whole'), {
    insert: snippetOf(template, system),
    snippet: true,
    filter: `${template.row} whole`,
    about: { kind: 'row', id: template.row },
  });

const wholes = remembered((template: Template) => ({
  metric: wholeIn(template, 'metric'),
  us: wholeIn(template, 'us'),
}));

const wholeOf = (template: Template, { snapshot }: CompletionPlace): Suggestion =>
  wholes(template)[unitById(snapshot.log.units.depth)?.system === 'us' ? 'us' : 'metric'];

const fileRows = table.filter(({ where }) => where === 'file');
const mainRows = table.filter(({ where }) => where === 'section' || where === 'line');

function rowsIn({ snapshot, at }: CompletionPlace, first: number): ReadonlySet<string> {
  const rows = new Set<string>();
  for (const [number, { row }] of snapshot.tree.lines.entries())
    if (row !== null && number !== at.line && number >= first) rows.add(row);
  return rows;
}

/** What hangs on the open section, what it lacks before what it has. */
function hangingHere(place: CompletionPlace): readonly Row[] {
  if (place.section === null) return [];
  const given = rowsIn(place, openingLine(place) ?? 0);
  const under = rowsUnder(place.section);
  return [...under.filter(({ id }) => !given.has(id)), ...under.filter(({ id }) => given.has(id))];
}

const hangingElsewhere = ({ section }: CompletionPlace, given: ReadonlySet<string>): readonly Row[] =>
  section !== null && !isStringSection(section) && given.has('casing') ? rowsUnder('casing') : [];

const isBlank = (text: string | undefined): boolean => text !== undefined && text.trim() === '';

/** True behind an empty line, which is where a section has been left. */
export const isBehindEmptyLine = ({ snapshot, at }: CompletionPlace): boolean => isBlank(snapshot.lines[at.line - 1]);

/** What hangs on the open section first, or what the log lacks where the section was left, then the head of the file, then the rest. */
function rowsByFit(place: CompletionPlace): readonly Row[] {
  const given = rowsIn(place, 0);
  const missing = missingSections(place.snapshot, given);
  const here = hangingHere(place);
  const head = fileRows.filter(({ id }) => !given.has(id) || repeatable.has(id));
  const again = mainRows.filter(({ id }) => given.has(id));
  const rest = [...again, ...hangingElsewhere(place, given)];
  if (isBehindEmptyLine(place)) return [...new Set([...missing, ...here, ...head, ...rest])];
  const main = place.section === null ? [...head, ...missing, ...rest] : [...here, ...missing, ...rest, ...head];
  return [...new Set(main)];
}

/** The keywords that may begin the line, and the whole sections that begin with them behind all the keywords. */
export const suggestKeywords: SuggestionSource = (place) => {
  if (place.where !== 'line-start') return [];
  const rows = rowsByFit(place);
  const whole = rows.flatMap((row) => templates.filter((template) => template.row === row.id));
  return [...rows.map((row) => suggestionOf(row, place)), ...whole.map((template) => wholeOf(template, place))];
};
