import type * as z from 'zod';
import { RecordFile } from './record-file.ts';

/** What a JSON text was found to be: the record in it, or why it is none. */
export type ReadRecord =
  | { readonly record: RecordFile; readonly fault: null }
  | { readonly record: null; readonly fault: string };

const none = (fault: string): ReadRecord => ({ record: null, fault });

function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`))
    .join('')
    .replace(/^\./, '');
}

function faultOf({ issues }: z.ZodError): string {
  const [first] = issues;
  if (first === undefined) return 'it is no record';
  const more = issues.length > 1 ? ` (and ${issues.length - 1} more)` : '';
  return `${pathText(first.path) || 'the whole'}: ${first.message}${more}`;
}

/** Reads a record that `recordJson` wrote. Never throws: a text that is no record is told with the place of its first fault. */
export function readRecord(text: string): ReadRecord {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return none(`it is not JSON: ${error instanceof Error ? error.message : String(error)}`);
  }
  const read = RecordFile.safeParse(value);
  return read.success ? { record: read.data, fault: null } : none(faultOf(read.error));
}
