import {
  type CodeAction,
  type CodeActionContext,
  CodeActionRequest,
  CodeActionResolveRequest,
  CodeActionTriggerKind,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { Snapshot } from '../analysis/snapshot.ts';
import { type Action, fixAllAction, quickFixActions, type Selection } from '../features/code-actions.ts';
import type { Change } from '../features/refactorings/change.ts';
import { refactoringChanges, refactoringRefusal, refactorings } from '../features/refactorings.ts';
import { codeActionOf, fixAllKind, placeOf, positionOf } from './convert.ts';
import { onDocument, onItem, type Registration } from './registration.ts';
import type { Session } from './session.ts';

/** True where the editor asks for actions of this kind: a kind covers those below it. */
const isWanted = ({ only }: CodeActionContext, kind: string): boolean =>
  only === undefined || only.some((wanted) => kind === wanted || kind.startsWith(`${wanted}.`));

const asksByName = (context: CodeActionContext, kind: string): boolean =>
  context.only !== undefined && isWanted(context, kind);

/** What an action needs to be worked out once it is chosen. */
interface Deferred {
  readonly uri: string;
  readonly version: number;
  readonly id: string;
  readonly name: string;
  readonly selection: Selection;
}

const editOf = (uri: string, changes: readonly Change[]): WorkspaceEdit => ({
  changes: {
    [uri]: changes.map(({ first, last, text }) => ({
      range: { start: positionOf(first), end: positionOf(last) },
      newText: text,
    })),
  },
});

const canResolve = ({ client }: Session): boolean =>
  client.textDocument?.codeAction?.resolveSupport?.properties.includes('edit') ?? false;

function refactorActions(
  snapshot: Snapshot,
  selection: Selection,
  uri: string,
  context: CodeActionContext,
  session: Session,
): CodeAction[] {
  const asked = context.only !== undefined || context.triggerKind !== CodeActionTriggerKind.Automatic;
  const offered = refactorings(snapshot, selection, asked).filter(({ kind }) => isWanted(context, kind));
  return offered.flatMap(({ id, name, title, kind }): CodeAction[] => {
    const deferred: Deferred = { uri, version: snapshot.version, id, name, selection };
    if (canResolve(session)) return [{ title, kind, data: deferred }];
    const changes = refactoringChanges(snapshot, selection, id, name);
    return changes.length === 0 ? [] : [{ title, kind, edit: editOf(uri, changes) }];
  });
}

/** An action for a text that has changed since comes to nothing. */
function resolved(action: CodeAction, session: Session): CodeAction {
  const deferred = action.data as Deferred | undefined;
  if (deferred === undefined) return action;
  const { uri, version, id, name, selection } = deferred;
  const snapshot = session.snapshot(uri);
  if (snapshot === null || snapshot.version !== version) return action;
  const changes = refactoringChanges(snapshot, selection, id, name);
  if (changes.length === 0) session.tell(refactoringRefusal(snapshot, selection, id, name));
  return { ...action, edit: editOf(uri, changes) };
}

/** Changes that are offered: fixes of findings, and what a person may want to do with a text that is in order. */
export const actionRequests: readonly Registration[] = [
  onDocument(CodeActionRequest.type, null, (snapshot, { range, context, textDocument: { uri } }, session) => {
    const selection = { first: placeOf(range.start), last: placeOf(range.end) };
    const fixAll = asksByName(context, fixAllKind) ? fixAllAction(snapshot) : null;
    const actions: readonly Action[] = [
      ...(isWanted(context, 'quickfix') ? quickFixActions(snapshot, selection) : []),
      ...(fixAll === null ? [] : [fixAll]),
    ];
    return [
      ...actions.map((action) => codeActionOf(action, uri, context.diagnostics)),
      ...refactorActions(snapshot, selection, uri, context, session),
    ];
  }),
  onItem(CodeActionResolveRequest.type, resolved),
];
