import * as l10n from '@vscode/l10n';
import { type Row, rowById, table } from '../../../grammar/table.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import { missingSections } from '../completion/next-sections.ts';
import { type Change, lineInserted } from './change.ts';
import type { Refactoring } from './refactoring.ts';

/** More than the likeliest are not offered. */
const mostOffered = 3;

const depthsAsked: Readonly<Record<Row['depths'], string>> = {
  none: '',
  interval: '? - ?',
  depth: '?',
  either: '?',
  optional: '',
};

/** A question mark for each thing that is expected of a line. */
function questions({ depths, slots }: Row): string {
  const expected = slots.filter((slot) => slot.expected).map(() => '?');
  const parts = [depthsAsked[depths], ...expected].filter((part) => part !== '');
  return parts.join('  ');
}

/** Hole and strata begin at the ground, where nothing stands above. */
const beginsAtGround = new Set(['hole.line', 'strata.line']);

function firstLine(row: Row): string {
  return beginsAtGround.has(row.id) ? questions(row).replace('? -', '-') : questions(row);
}

/** A section as questions for the crew. */
export function sectionOfQuestions(row: Row): string {
  const keyword = row.keywords[0] ?? row.id;
  const head = `${keyword}  ${questions(row)}`.trimEnd();
  return row.lines === null ? head : `${head}\n  ${firstLine(rowById(row.lines))}`;
}

const givenRows = ({ tree }: Snapshot): ReadonlySet<string> =>
  new Set(tree.lines.flatMap(({ row }) => (row === null ? [] : [row])));

function appended({ lines }: Snapshot, text: string): Change {
  const end = lines.findLastIndex((line) => line.trim() !== '') + 1;
  return lineInserted(lines, end, `\n${text}`);
}

/** A well that nobody sealed lacks no report of how it was. */
const isSealed = ({ log }: Snapshot): boolean => /abandon|decommission|sealed|dry/.test(statusOf(log));

const statusOf = ({ status }: Snapshot['log']): string => {
  if (status === null) return '';
  return 'id' in status ? status.id : status.text.toLowerCase();
};

const lackedBy = (snapshot: Snapshot): readonly Row[] =>
  missingSections(snapshot, givenRows(snapshot)).filter(({ id }) => id !== 'abandonment' || isSealed(snapshot));

/** The sections that a log of this kind lacks, each put in behind the last line with a question mark for every fact. */
export const missingSection: Refactoring = {
  id: 'missing-section',
  kind: 'refactor.rewrite',
  offers: (snapshot, _, asked) =>
    (asked ? lackedBy(snapshot) : []).slice(0, mostOffered).map(({ id }) => ({
      name: id,
      title: l10n.t('Add what is missing: {0}, with a question mark for each fact', id),
    })),
  changes: (snapshot, _, name) => {
    const row = table.find(({ id }) => id === name);
    return row === undefined ? [] : [appended(snapshot, sectionOfQuestions(row))];
  },
  refusal: null,
};
