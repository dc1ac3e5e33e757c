/** What the server and its editor say to each other beyond the language server protocol. Plain types, nothing imported. */

/** Request, editor → server: the preview of one open log. Answered with `Preview`, or null for a document that is not open. */
export const previewRequest = 'drillhand/preview';

export interface PreviewParams {
  readonly textDocument: { readonly uri: string };
  /** Columns of the drawing that are switched off; none where it is left out. */
  readonly hidden?: readonly string[];
  /** Width in mm that there is for the drawing; as much as it likes where it is left out. */
  readonly widthMm?: number | null;
}

/**
 * One section of a preview: a `section` element with the id as its `data-section`, every piece of the user's text
 * escaped, no script, no style element and no style attribute. An element that comes from a line carries `data-line`,
 * counted from 0; in it is one with `tabindex="0"` that leads to the line. The element that says how many findings there
 * are carries `data-summary`.
 */
export interface PreviewSection {
  readonly id: string;
  readonly html: string;
}

export interface PreviewColumn {
  readonly id: string;
  readonly title: string;
  readonly shown: boolean;
}

/** A log's computed record, its drawing and its findings, ready to be shown. */
export interface Preview {
  readonly version: number;
  readonly title: string;
  readonly sections: readonly PreviewSection[];
  readonly columns: readonly PreviewColumn[];
}

/** Notification, server → editor: what is known of the logs of the workspace changed. It carries nothing: ask again. */
export const folderChangedNotification = 'drillhand/folderChanged';

/** Request, editor → server: the wells of the open folders. Takes nothing, and is answered with `FolderWells`. */
export const folderRequest = 'drillhand/folder';

/** A line below a well in the view of the folder. */
export interface FolderFact {
  readonly label: string;
  readonly value: string;
  /** Name of a sign for it: `depth`, `level`, `yield`, `due`, `place`, `strings`. */
  readonly sign: string;
}

/** One well of the folder, as the view shows it. Texts are ready to be shown; keys to sort by are null where unknown. */
export interface FolderEntry {
  readonly uri: string;
  readonly label: string;
  readonly description: string;
  /** Plain text of several lines. */
  readonly tooltip: string;
  readonly state: 'errors' | 'warnings' | 'clean';
  readonly facts: readonly FolderFact[];
  readonly keys: {
    readonly id: string;
    readonly file: string;
    readonly depth: number | null;
    readonly due: string | null;
    readonly findings: number;
  };
}

export interface FolderWells {
  readonly wells: readonly FolderEntry[];
  /** True while logs are still being read. */
  readonly isReading: boolean;
  /** What the user must know of the list, such as that there are more logs than are read; else null. */
  readonly note: string | null;
}

/** Notification, server → editor: a version of an open log has been analysed, and its preview may have changed. */
export const analysedNotification = 'drillhand/analysed';

export interface AnalysedParams {
  readonly uri: string;
  readonly version: number;
}

/** Request, editor → server: an open log in a format for others. Answered with `ExportAnswer`, never an error. */
export const exportRequest = 'drillhand/export';

export interface ExportParams {
  readonly textDocument: { readonly uri: string };
  /** Id of the format, such as `gwml`. */
  readonly format: string;
  /** Name of the log without folder and extension. */
  readonly name: string;
}

/** The files that were made, each as text or as base64; what could not be carried; why nothing was made, or null. */
export interface ExportAnswer {
  readonly files: readonly { readonly name: string; readonly text: string | null; readonly base64: string | null }[];
  readonly left: readonly string[];
  readonly reason: string | null;
}

/** Request, editor → server: the formats that there are. Answered with `ExportChoice[]`. */
export const exportFormatsRequest = 'drillhand/exportFormats';

export interface ExportChoice {
  readonly id: string;
  readonly title: string;
  readonly extension: string;
  /** True where it makes several files, which go into a folder. */
  readonly many: boolean;
}

/** Request, editor → server: the next item that a line lacks. Answered with `NextItem`, or null where it lacks nothing. */
export const nextItemRequest = 'drillhand/nextItem';

/** A stretch of one line: line and UTF-16 columns from 0. */
export interface Stretch {
  readonly line: number;
  readonly start: number;
  readonly end: number;
}

/** A piece that was put in for one item. */
export interface Offered {
  readonly slot: string;
  readonly start: number;
  readonly end: number;
}

export interface NextItemParams {
  readonly textDocument: { readonly uri: string };
  readonly selected: Stretch;
  /** What the last answer put in, as long as nobody has written over it. */
  readonly offered: Offered | null;
}

export interface NextItem {
  readonly edits: readonly { readonly span: Stretch; readonly text: string }[];
  /** What is selected once the edits are made. */
  readonly select: Stretch;
  /** True where terms are waited for, so that they may be shown. */
  readonly suggest: boolean;
  readonly offered: Offered | null;
}

/**
 * Request, editor → server: what the program says of a rule or a rule pack, as Markdown; null where it knows none. Links to
 * such pages, `drillhand-page:/rule/ID.md`, are sent to editors that begin with the option `pages: true`.
 */
export const pageRequest = 'drillhand/page';
export const pageScheme = 'drillhand-page';

export interface PageParams {
  readonly kind: 'rule' | 'pack';
  readonly id: string;
}

/** Request, editor → server: rows of a sheet as lines of the section they are pasted into. Answered with `PastedRows`, or null. */
export const pastedRowsRequest = 'drillhand/pastedRows';

export interface PastedRowsParams {
  readonly textDocument: { readonly uri: string };
  readonly position: { readonly line: number; readonly character: number };
  readonly text: string;
}

export interface PastedRows {
  readonly text: string;
  /** How far before the cursor on its line the text begins: a dash that waits for its depth gives way. */
  readonly replaceBefore: number;
  readonly lines: number;
}

/** Request, editor → server: what is shown of a whole log at a glance. Answered with `LogStatus`, or null. */
export const logStatusRequest = 'drillhand/logStatus';

export interface LogStatus {
  readonly packs: readonly string[];
  /** What is to be sent in next; `days` is negative where the day has passed, null where nobody knows which day it is. */
  readonly due: { readonly what: string; readonly date: string; readonly days: number | null } | null;
}

/** Request, editor → server: what has to be chosen for a new log. */
export const newLogChoicesRequest = 'drillhand/newLogChoices';

export interface Choice {
  readonly id: string;
  readonly title: string;
}

export interface NewLogChoices {
  readonly units: readonly Choice[];
  readonly packs: readonly Choice[];
}

/** Request, editor → server: the head of a new log, as a snippet. */
export const newLogRequest = 'drillhand/newLog';

export interface NewLogParams {
  readonly units: string;
  readonly packs: readonly string[];
}

/** Request, editor → server: what only the crew can answer. Answered with `QuestionsAnswer`, or null for a log that is not open. */
export const questionsRequest = 'drillhand/questions';

export interface QuestionsParams {
  readonly textDocument: { readonly uri: string };
}

/** The list as plain text, and how many questions are on it. */
export interface QuestionsAnswer {
  readonly text: string;
  readonly count: number;
}

/** Request, editor → server: field notes as lines of a log, entry by entry. Answered with `NotesAnswer`, never an error. */
export const readNotesRequest = 'drillhand/readNotes';

/** What the person has answered so far; null where nothing was said. */
export interface NotesOptions {
  readonly units: 'm' | 'ft' | null;
  readonly gallon: 'us' | 'imp' | null;
  readonly dates: 'dmy' | 'mdy' | null;
  readonly layers: 'thickness' | 'bases' | 'tops' | null;
  readonly columns: string | null;
}

/** The notes: as text, or as the bytes of a file in base64. */
export interface ReadNotesParams {
  readonly text: string | null;
  readonly base64: string | null;
  readonly options: NotesOptions;
}

export interface NotesLine {
  /** The part of the log that it belongs to, as `strata`. */
  readonly part: string;
  readonly text: string;
}

/** One line of the notes, or one row of a table; lines count from 1. */
export interface NotesEntry {
  readonly first: number;
  readonly last: number;
  readonly source: readonly string[];
  readonly lines: readonly NotesLine[];
  readonly status: 'understood' | 'partly' | 'not';
  readonly why: readonly string[];
}

export interface NotesQuestion {
  readonly about: keyof NotesOptions;
  readonly line: number;
  readonly says: string;
  readonly answers: readonly string[];
  /** True where nothing can be shown until it is answered. */
  readonly blocking: boolean;
}

export interface NotesAnswer {
  readonly entries: readonly NotesEntry[];
  readonly questions: readonly NotesQuestion[];
  /** Faults of the notes as a whole, in words. */
  readonly troubles: readonly string[];
  readonly units: 'm' | 'ft' | null;
  readonly bottomUp: boolean;
  /** The parts that a line may belong to. */
  readonly parts: readonly string[];
  /** Why nothing could be read, or null. */
  readonly reason: string | null;
}

/** Request, editor → server: what is wrong with a line that a person has written. Answered with words, or null. */
export const notesLineRequest = 'drillhand/notesLine';

/** Request, editor → server: reviewed notes as the text of a log, or as lines to be put into one. Answered with `WrittenNotes`. */
export const writeNotesRequest = 'drillhand/writeNotes';

export interface WriteNotesParams {
  readonly entries: readonly NotesEntry[];
  readonly units: 'm' | 'ft' | null;
  readonly gallon: 'us' | 'imp' | null;
  readonly bottomUp: boolean;
  /** The open log that the lines go into; null for a log of their own. */
  readonly into: { readonly uri: string } | null;
}

export interface WrittenNotes {
  readonly text: string;
  /** Why nothing was written, or null. */
  readonly reason: string | null;
}
