import type { Exported, ExportFormat } from '../format.ts';
import type { CsvTable } from './column.ts';
import { csvText } from './csv-text.ts';
import { csvTables } from './tables/index.ts';

const fileOf = ({ name, columns, rows }: CsvTable) => ({ name: `${name}.csv`, content: csvText([columns, ...rows]) });

const makeCsv: ExportFormat['make'] = (record, { source, findings }): Exported => ({
  files: csvTables(record, findings).map(fileOf),
  left: [
    'Text that a spreadsheet would take for a formula has an apostrophe before it.',
    ...(source.some((line) => line.includes('#')) ? ['Comments of the log (after #) are not in the tables.'] : []),
  ],
});

export const csvFormat: ExportFormat = {
  id: 'csv',
  title: 'Tables by section (CSV)',
  extension: 'csv',
  many: true,
  make: makeCsv,
};
