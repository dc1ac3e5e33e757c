import * as vscode from 'vscode';

const type = 'drillhand';

interface CheckDefinition extends vscode.TaskDefinition {
  readonly files?: readonly string[];
}

/** The program that checks, where the user has named one. */
const commandLine = (): string => vscode.workspace.getConfiguration('drillhand').get('commandLine.path', 'drillhand');

function taskOf(definition: CheckDefinition, scope: vscode.WorkspaceFolder | vscode.TaskScope): vscode.Task {
  const args = ['check', ...(definition.files ?? ['.'])];
  const execution = new vscode.ProcessExecution(commandLine(), args);
  const task = new vscode.Task(
    definition,
    scope,
    vscode.l10n.t('check every log'),
    'drillhand',
    execution,
    '$drillhand',
  );
  task.group = vscode.TaskGroup.Test;
  task.detail = vscode.l10n.t('Checks the logs of the folder with the command line');
  return task;
}

/** The task that checks the logs of a folder; what it finds is listed among the problems. */
export const registerCheckTask = (): vscode.Disposable =>
  vscode.tasks.registerTaskProvider(type, {
    provideTasks: () => (vscode.workspace.workspaceFolders ?? []).map((folder) => taskOf({ type }, folder)),
    resolveTask: ({ definition, scope }) => taskOf(definition, scope ?? vscode.TaskScope.Workspace),
  });
