import { type Row, rowsUnder, table } from '../../../grammar/table.ts';
import type { CompletionPlace } from './place.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

const repeatable = new Set(['note', 'distance', 'shift', 'existing', 'photo']);

const depthsOf: Readonly<Record<Row['depths'], string>> = {
  none: '',
  interval: `\${1:?} - \${2:?} `,
  depth: `\${1:?} `,
  either: `\${1:?} `,
  optional: '',
};

function snippetOf(row: Row, keyword: string): string {
  if (row.where === 'section' && row.lines !== null && row.slots.length === 0) return `${keyword}\n  $0`;
  return `${keyword} ${depthsOf[row.depths]}$0`;
}

const suggestionOf = (row: Row): Suggestion => {
  const keyword = row.keywords[0] ?? row.id;
  return plain('keyword', keyword, row.doc, {
    insert: snippetOf(row, keyword),
    snippet: true,
    filter: row.keywords.join(' '),
    about: { kind: 'row', id: row.id },
  });
};

const ofWhere = (...wheres: readonly Row['where'][]): readonly Row[] =>
  table.filter((row) => wheres.includes(row.where));

const fileRows = ofWhere('file');
const mainRows = [...ofWhere('section'), ...ofWhere('line')];

const rowsGiven = ({ snapshot, at }: CompletionPlace): ReadonlySet<string> =>
  new Set(snapshot.tree.lines.flatMap(({ row }, number) => (row === null || number === at.line ? [] : [row])));

const isString = (section: string): boolean => ['casing', 'liner', 'screen'].includes(section);

const hanging = (section: string | null, given: ReadonlySet<string>): readonly Row[] => {
  if (section === null) return [];
  const strings = !isString(section) && given.has('casing') ? rowsUnder('casing') : [];
  return [...rowsUnder(section), ...strings];
};

/** What hangs on the open section first, then sections that the file lacks, then the head of the file, then the rest. */
function rowsByFit(place: CompletionPlace): readonly Row[] {
  const given = rowsGiven(place);
  const { section } = place;
  const under = hanging(section, given);
  const head = fileRows.filter(({ id }) => !given.has(id) || repeatable.has(id));
  const missing = mainRows.filter(({ id }) => !given.has(id));
  const again = mainRows.filter(({ id }) => given.has(id));
  const main = section === null ? [...head, ...missing] : [...under.slice(0, rowsUnder(section).length), ...missing];
  const rest = section === null ? [...again, ...under] : [...again, ...under, ...head];
  return [...new Set([...main, ...rest])];
}

/** The keywords that may begin the line. */
export const suggestKeywords: SuggestionSource = (place) =>
  place.where === 'line-start' ? rowsByFit(place).map(suggestionOf) : [];
