import { afterEach, expect, test, vi } from 'vitest';

/** LogLevel of the editor's interface, in its own numbers. */
const levels = { Off: 0, Trace: 1, Info: 3 };

let setting = 'off';
const changed: ((event: { affectsConfiguration: (section: string) => boolean }) => void)[] = [];

function change(to: string): void {
  setting = to;
  for (const listener of changed) listener({ affectsConfiguration: (section) => section === 'drillhand.trace.server' });
}

/** As much of the editor's interface as the channel uses. */
vi.mock('vscode', () => ({
  LogLevel: levels,
  Disposable: { from: () => ({ dispose: () => {} }) },
  EventEmitter: class {
    readonly listeners: ((value: unknown) => void)[] = [];
    readonly event = (listener: (value: unknown) => void) => this.listeners.push(listener);
    fire(value: unknown) {
      for (const listener of this.listeners) listener(value);
    }
  },
  workspace: {
    getConfiguration: () => ({ get: () => setting }),
    onDidChangeConfiguration: (listener: (typeof changed)[number]) => changed.push(listener),
  },
}));

const { traceChannel } = await import('../../client/trace.ts');

const written: string[] = [];
const log = {
  logLevel: levels.Info,
  onDidChangeLogLevel: () => {},
  info: (message: string) => written.push(`info ${message}`),
  trace: (message: string) => written.push(`trace ${message}`),
} as unknown as Parameters<typeof traceChannel>[0];

afterEach(() => {
  written.length = 0;
  setting = 'off';
});

test('without the setting, messages go where the lowest level of the log goes', () => {
  const channel = traceChannel(log);
  expect(channel.logLevel).toBe(levels.Info);
  channel.trace('a request');
  expect(written).toEqual(['trace a request']);
});

test('with the setting, they are asked for and written, whatever the level of the log', () => {
  const channel = traceChannel(log);
  const told: unknown[] = [];
  channel.onDidChangeLogLevel((level) => told.push(level));
  change('messages');
  expect(channel.logLevel).toBe(levels.Trace);
  channel.trace('a request');
  expect(written).toEqual(['info a request']);
  change('off');
  expect(told).toEqual([levels.Trace, levels.Info]);
});
