import type { Cell } from '../../export/csv/csv-text.ts';
import { severities } from '../../folder/summary.ts';
import { countsText, depthOf, dueText, levelOf, placeText, stringText, yieldOf } from '../../folder/summary-text.ts';
import type { Listed } from './listed.ts';

/** What can be sorted and filtered by, and stands in a column of the CSV. */
export interface Key {
  readonly key: string;
  /** Heading in the CSV, with the unit. */
  readonly heading: string;
  readonly says: string;
  /** SI factor of the unit in which a number of a filter counts that names none; null for texts, dates and counts. */
  readonly unit: string | null;
  readonly value: (well: Listed) => Cell;
}

const litresPerMinute = 1000 * 60;

const rounded = (value: number | null, decimals: number): number | null =>
  value === null ? null : Number(value.toFixed(decimals));

const key = (name: string, says: string, value: Key['value'], unit: string | null = null): Key => ({
  key: name,
  heading: unit === null ? name : `${name}_${unit.replace('/', '_per_')}`,
  says,
  unit,
  value,
});

export const keys: readonly Key[] = [
  key('id', 'id of the well', ({ summary }) => summary.id),
  key('file', 'file of the log', ({ file }) => file),
  key('location', 'where it is, in words', ({ summary }) => summary.location),
  key('owner', 'whose it is', ({ summary }) => summary.owner),
  key('latitude', 'degrees north', ({ summary }) => rounded(summary.place?.latitude ?? null, 7)),
  key('longitude', 'degrees east', ({ summary }) => rounded(summary.place?.longitude ?? null, 7)),
  key('datum', 'datum of the place', ({ summary }) => summary.place?.datum?.name ?? null),
  key('depth', 'bottom of the hole', ({ summary }) => rounded(summary.depth, 3), 'm'),
  key(
    'strings',
    'casings, liners and screens that stay',
    ({ summary }) => summary.strings.map((each) => stringText(each, summary)).join('; ') || null,
  ),
  key('level', 'static level below ground', ({ summary }) => rounded(summary.level?.depth ?? null, 3), 'm'),
  key('measured', 'day of that level', ({ summary }) => summary.level?.date ?? null),
  key(
    'yield',
    'rate of water',
    ({ summary }) => rounded(summary.yield === null ? null : summary.yield.rate * litresPerMinute, 2),
    'L/min',
  ),
  key('basis', 'what the yield was: tested, found or flowing', ({ summary }) => summary.yield?.basis ?? null),
  key('finished', 'day on which it was finished', ({ summary }) => summary.finished),
  ...severities.map((severity) =>
    key(severity, `findings of that severity`, ({ summary }) => summary.findings[severity]),
  ),
  key('findings', 'all findings', ({ summary }) => severities.reduce((sum, each) => sum + summary.findings[each], 0)),
  key('due', 'day by which something must be sent in', ({ summary }) => summary.due?.day ?? null),
  key('what', 'what that is', ({ summary }) => summary.due?.what ?? null),
  key('left', 'days left until then', ({ summary }) => summary.due?.left ?? null),
];

/** A column of the list for people; numbers stand flush right. */
export interface TextColumn {
  readonly title: string;
  readonly numeric: boolean;
  readonly text: (well: Listed) => string;
}

const column = (title: string, text: (well: Listed) => string | null, numeric = false): TextColumn => ({
  title,
  numeric,
  text: (well) => text(well) ?? '?',
});

const stringsText = ({ summary }: Listed): string | null =>
  summary.strings.map((each) => stringText(each, summary)).join('; ') || null;

export const textColumns: readonly TextColumn[] = [
  column('well', ({ summary }) => summary.id),
  column('place', ({ summary }) => summary.place && placeText(summary.place)),
  column('depth', ({ summary }) => depthOf(summary), true),
  column('strings', stringsText),
  column('level', ({ summary }) => levelOf(summary), true),
  column('yield', ({ summary }) => yieldOf(summary), true),
  column('findings', ({ summary }) => countsText(summary.findings)),
  column('due', ({ summary }) => (summary.due ? dueText(summary.due) : '–')),
  column('log', ({ file }) => file),
];
