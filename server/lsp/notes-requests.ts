import { Buffer } from 'node:buffer';
import * as l10n from '@vscode/l10n';
import { RequestType } from 'vscode-languageserver';
import type { Snapshot } from '../analysis/snapshot.ts';
import { formatText } from '../features/format.ts';
import { decodeNotes } from '../import/decode.ts';
import { assemble, type Entry, faultIn, isPart, parts, readNotes } from '../import/index.ts';
import {
  type NotesAnswer,
  type NotesEntry,
  type NotesLine,
  notesLineRequest,
  type ReadNotesParams,
  readNotesRequest,
  type WriteNotesParams,
  type WrittenNotes,
  writeNotesRequest,
} from './protocol.ts';
import type { Registration } from './registration.ts';
import type { Session } from './session.ts';

const readRequest = new RequestType<ReadNotesParams, NotesAnswer, void>(readNotesRequest);
const lineRequest = new RequestType<NotesLine, string | null, void>(notesLineRequest);
const writeRequest = new RequestType<WriteNotesParams, WrittenNotes, void>(writeNotesRequest);

const nothingRead = (reason: string): NotesAnswer => ({
  entries: [],
  questions: [],
  troubles: [],
  units: null,
  bottomUp: false,
  parts,
  reason,
});

function textOf({ text, base64 }: ReadNotesParams): { text: string; note: string | null } | { reason: string } {
  return base64 === null ? { text: text ?? '', note: null } : decodeNotes(Buffer.from(base64, 'base64'));
}

function read(params: ReadNotesParams): NotesAnswer {
  const decoded = textOf(params);
  if ('reason' in decoded) return nothingRead(decoded.reason);
  if (decoded.text.trim() === '') return nothingRead(l10n.t('there are no notes to read'));
  const { entries, questions, troubles, units, bottomUp } = readNotes(decoded.text, params.options);
  const said = troubles.map(({ line, says }) => l10n.t('line {0}: {1}', line, says));
  return {
    entries,
    questions,
    troubles: decoded.note === null ? said : [decoded.note, ...said],
    units,
    bottomUp,
    parts,
    reason: null,
  };
}

/** An entry as it came back from the editor; a line of a part that nobody knows is left away. */
const entryOf = (entry: NotesEntry): Entry => ({
  ...entry,
  lines: entry.lines.flatMap(({ part, text }) => (isPart(part) ? [{ part, text: text.replace(/[\r\n]+/g, ' ') }] : [])),
});

/** The unit of bare depths in an open log. */
const depthUnitOf = ({ tree }: Snapshot): 'm' | 'ft' => {
  const units = tree.lines.find(({ row }) => row === 'units');
  return /^\s*units\s+ft\b/i.test(units?.text ?? '') ? 'ft' : 'm';
};

function write({ entries, units, gallon, bottomUp, into }: WriteNotesParams, session: Session): WrittenNotes {
  const made = entries.map(entryOf);
  if (into === null) return { text: formatText(assemble(made, { units, gallon, pack: null, bottomUp })), reason: null };
  const snapshot = session.snapshot(into.uri);
  if (snapshot === null) return { text: '', reason: l10n.t('the log is not open') };
  const own = depthUnitOf(snapshot);
  if (units !== null && units !== own)
    return {
      text: '',
      reason:
        own === 'ft'
          ? l10n.t('the notes are in metres and the log is in feet: make a log of its own of them')
          : l10n.t('the notes are in feet and the log is in metres: make a log of its own of them'),
    };
  return { text: formatText(assemble(made, { units: null, gallon: null, pack: null, bottomUp })), reason: null };
}

/** Answers with `fallback` where the work throws. */
const safely = <P, R>(session: Session, method: string, work: (params: P) => R, fallback: (reason: string) => R) => {
  return (params: P): R => {
    try {
      return work(params);
    } catch (error) {
      session.fail(method, error);
      return fallback(error instanceof Error ? error.message : String(error));
    }
  };
};

/** Field notes: read them, look at a line that was changed, write what was accepted. */
export const notesRequests: readonly Registration[] = [
  (connection, session) => {
    connection.onRequest(readRequest, safely(session, readNotesRequest, read, nothingRead));
  },
  (connection, session) => {
    const look = ({ part, text }: NotesLine) => (isPart(part) ? faultIn(part, text) : null);
    connection.onRequest(
      lineRequest,
      safely(session, notesLineRequest, look, () => null),
    );
  },
  (connection, session) => {
    const answer = (params: WriteNotesParams) => write(params, session);
    connection.onRequest(
      writeRequest,
      safely(session, writeNotesRequest, answer, (reason) => ({ text: '', reason })),
    );
  },
];
