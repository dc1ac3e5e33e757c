import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { nodeFiles } from './node-files.ts';
import { startServer } from './server.ts';
import { todayHere } from './settings.ts';

const endsWithItsReader = new Set(['EPIPE', 'ERR_STREAM_DESTROYED', 'ERR_IPC_CHANNEL_CLOSED']);

const codeOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';

/** A fault that nothing else caught must not end the server; an editor that is gone must. */
function survive(error: unknown): void {
  if (endsWithItsReader.has(codeOf(error))) process.exit(1);
  process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
}

process.on('uncaughtException', survive);
process.on('unhandledRejection', survive);

const transports = ['--node-ipc', '--stdio', '--socket', '--pipe'];
const isNamed = process.argv.some((argument) => transports.some((name) => argument.split('=')[0] === name));
if (!isNamed) process.argv.push(process.send === undefined ? '--stdio' : '--node-ipc');

startServer(createConnection(ProposedFeatures.all), {
  today: todayHere,
  files: nodeFiles,
  asset: (name) => readFile(path.join(path.dirname(process.argv[1] ?? ''), name)),
});
