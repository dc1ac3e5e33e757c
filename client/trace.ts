import * as vscode from 'vscode';

const section = 'drillhand';
const setting = 'trace.server';

const isAskedFor = (): boolean => vscode.workspace.getConfiguration(section).get(setting, 'off') !== 'off';

/**
 * The log as the channel for the messages between editor and checker: the setting alone brings them, while the editor
 * itself would show them only at its lowest level of logging.
 */
export function traceChannel(log: vscode.LogOutputChannel): vscode.LogOutputChannel {
  const level = (): vscode.LogLevel => (isAskedFor() ? vscode.LogLevel.Trace : log.logLevel);
  const changed = new vscode.EventEmitter<vscode.LogLevel>();
  const listeners = [
    log.onDidChangeLogLevel(() => changed.fire(level())),
    vscode.workspace.onDidChangeConfiguration((event) => {
      if (event.affectsConfiguration(`${section}.${setting}`)) changed.fire(level());
    }),
  ];
  return {
    ...log,
    get logLevel() {
      return level();
    },
    onDidChangeLogLevel: changed.event,
    trace: (message: string) => (isAskedFor() ? log.info(message) : log.trace(message)),
    dispose: () => vscode.Disposable.from(changed, ...listeners).dispose(),
  };
}
