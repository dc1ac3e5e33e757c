import type { Record as WellRecord } from '../record/record.ts';

/** A finding as the exporters see it. */
export interface ReportedFinding {
  readonly rule: string;
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly message: string;
  readonly span: { readonly line: number; readonly start: number; readonly end: number };
}

/** What an exporter may know beside the record. */
export interface ExportContext {
  /** The lines of the log that the record is of. */
  readonly source: readonly string[];
  readonly findings: readonly ReportedFinding[];
  /** Name of the log without folder and extension; files are named after it. */
  readonly name: string;
  /** Today as YYYY-MM-DD. */
  readonly today: string;
  /** Reads a file shipped beside the program, such as a font; rejects where there is none. */
  readonly asset: (name: string) => Promise<Uint8Array>;
}

export interface ExportedFile {
  /** File name, without folder. */
  readonly name: string;
  readonly content: string | Uint8Array;
}

export interface Exported {
  readonly files: readonly ExportedFile[];
  /** What the log says and the format could not carry, one sentence each. */
  readonly left: readonly string[];
}

/** One way of writing a record for others. The same record, context and format give the same bytes. */
export interface ExportFormat {
  /** As given on the command line. */
  readonly id: string;
  readonly title: string;
  /** Of its file, without the dot. */
  readonly extension: string;
  /** True where it makes several files, which go into a folder. */
  readonly many: boolean;
  readonly make: (record: WellRecord, context: ExportContext) => Exported | Promise<Exported>;
}
