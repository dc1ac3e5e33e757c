import type { Record as WellRecord } from '../../../record/record.ts';
import type { ReportedFinding } from '../../format.ts';
import type { CsvTable } from '../column.ts';
import { finishTables } from './finish.ts';
import { groundTables } from './ground.ts';
import { headTables } from './head.ts';
import { resultTables } from './results.ts';
import { stringTables } from './strings.ts';
import { testTables } from './tests.ts';
import { waterTables } from './water.ts';

/** The tables that have a row, in the order of a well record. */
export const csvTables = ({ log, figures }: WellRecord, findings: readonly ReportedFinding[]): CsvTable[] =>
  [
    ...headTables(log),
    ...groundTables(log),
    ...stringTables(log),
    ...waterTables(log),
    ...testTables(log),
    ...finishTables(log),
    ...resultTables(figures, findings),
  ].filter(({ rows }) => rows.length > 0);
