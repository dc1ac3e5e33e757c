import * as z from 'zod';
import { RecordFile } from './record-file.ts';

/** JSON Schema (draft 2020-12) of what `recordJson` writes. */
export const recordSchema = (): object => ({ title: 'Well record', ...z.toJSONSchema(RecordFile, { reused: 'ref' }) });
