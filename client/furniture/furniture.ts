import type * as vscode from 'vscode';
import type { CheckerServer } from '../server.ts';
import { registerCheckTask } from './check-task.ts';
import { registerNewLog } from './new-log.ts';
import { registerStatusItem } from './status-item.ts';

/** What stands around the text: the status of a log, the way to a new one, and the task that checks them all. */
export const registerFurniture = (server: CheckerServer): vscode.Disposable[] => [
  ...registerStatusItem(server),
  registerNewLog(server),
  registerCheckTask(),
];
