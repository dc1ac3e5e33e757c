import type * as vscode from 'vscode';
import type { CheckerServer } from '../server.ts';
import { registerLeaveSection } from './leave-section.ts';
import { registerNextItem } from './next-item.ts';
import { registerPasteRows } from './paste-rows.ts';

/** What helps while a log is typed. */
export const registerTyping = (server: CheckerServer): vscode.Disposable[] => [
  ...registerNextItem(server),
  ...registerLeaveSection(),
  ...registerPasteRows(server),
];
