import type { Figure } from '../../../record/record.ts';
import type { ReportedFinding } from '../../format.ts';
import { type CsvTable, table, text } from '../column.ts';
import { yesNo } from '../yes-no.ts';

/** What was computed and what was found. */
export const resultTables = (figures: readonly Figure[], findings: readonly ReportedFinding[]): CsvTable[] => [
  table('figures', figures, [
    text('id', (row) => row.id),
    text('title', (row) => row.title),
    { title: 'value_si', of: (row) => row.value },
    text('unit_si', (row) => row.unit),
    text('text', (row) => row.text),
    text('formula', (row) => row.formula),
    text('source', (row) => row.source),
    text('waits_for', (row) => row.waitsFor.join('; ')),
    text('doubtful', (row) => yesNo(row.doubtful)),
    text('caution', (row) => row.caution),
    text('lines', (row) => row.lines.map((line) => line + 1).join('; ')),
  ]),
  table('findings', findings, [
    text('rule', (row) => row.rule),
    text('severity', (row) => row.severity),
    text('message', (row) => row.message),
    { title: 'line', of: (row) => row.span.line + 1 },
  ]),
];
