import type { WellLog } from '../../model/log.ts';
import { drillingTables } from './drilling-tables.ts';
import { abandonmentTables, equipmentTables, noteTables, questionTables, treatmentTablesOf } from './finish-tables.ts';
import { holeTables, strataTables } from './ground-tables.ts';
import { headerTables } from './header-tables.ts';
import { stringTables } from './string-tables.ts';
import type { Table, TableGroup } from './table.ts';
import { testTables } from './test-tables.ts';
import { waterTables } from './water-tables.ts';

/* The usual order of a well record: common practice, no source. */
const groups: readonly (readonly [id: string, title: string, tables: (log: WellLog) => Table[]])[] = [
  ['header', 'Well', headerTables],
  ['hole', 'Hole', holeTables],
  ['strata', 'Strata', strataTables],
  ['strings', 'Casing, screens and fills', stringTables],
  ['drilling', 'Drilling', drillingTables],
  ['water', 'Water', waterTables],
  ['tests', 'Tests', testTables],
  ['treatment', 'Development and disinfection', treatmentTablesOf],
  ['equipment', 'Pump and cap', equipmentTables],
  ['abandonment', 'Abandonment', abandonmentTables],
  ['notes', 'Notes', noteTables],
  ['questions', 'Questions', questionTables],
];

/** The record of a log as tables in the order of a well record; groups of which the log says nothing are left out. */
export const recordTables = (log: WellLog): TableGroup[] =>
  groups.map(([id, title, tables]) => ({ id, title, tables: tables(log) })).filter(({ tables }) => tables.length > 0);
