import * as z from 'zod';
import { Record as WellRecord } from '../record/record.ts';

/** JSON Schema (draft 2020-12) of what `recordJson` writes. */
export const recordSchema = (): object => ({ title: 'Well record', ...z.toJSONSchema(WellRecord, { reused: 'ref' }) });

/** The schema as a file. */
export const recordSchemaJson = (): string => `${JSON.stringify(recordSchema(), null, 2)}\n`;
