/**
 * `node .config/run.mjs tests/benchmark/folder.ts [1000]`: a folder of so many logs is opened with one log in the editor.
 * Tells when the open log's findings came, how long it took to read the folder, and the longest that the editor waited
 * for an answer meanwhile; then the same after a change of the settings, for which all is read anew.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import type { FolderWells } from '../../server/lsp/protocol.ts';
import { Editor } from '../lsp/editor.ts';
import { buildServers } from './bundles.ts';

const count = Number(process.argv[2] ?? 1000);
const samples = readdirSync('samples')
  .filter((name) => name.endsWith('.well'))
  .map((name) => readFileSync(path.join('samples', name), 'utf8'));

/** A folder of sample logs, each with an id and a place of its own. */
function folderOf(wells: number): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'drillhand-many-'));
  for (let at = 0; at < wells; at++) {
    const text = (samples[at % samples.length] ?? '')
      .replace(/^well .*$/m, `well W-${at}`)
      .replace(/^place .*$/m, `place ${(44 + at / 1000).toFixed(3)} -78.2 NAD83`);
    writeFileSync(path.join(folder, `w${at}.well`), text);
  }
  return folder;
}

const since = (begun: number): string => `${Math.round(performance.now() - begun)} ms`;

let askedAt = 0;

/** True once every log is read; looks twice a second, so that the looking itself costs little. */
async function isRead(editor: Editor): Promise<boolean> {
  if (performance.now() - askedAt < 500) return false;
  askedAt = performance.now();
  const { wells, isReading } = await editor.request<FolderWells>('drillhand/folder', undefined);
  return !isReading && wells.length === count;
}

/** Processor time that the server has used, in seconds, as the system counts it. */
function processorTime({ process: { pid } }: Editor): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
  return (Number(fields[11]) + Number(fields[12])) / 100;
}

/** Asks over and over until all is read; returns the longest wait for an answer, in milliseconds. */
async function longestWait(editor: Editor, uri: string): Promise<number> {
  let longest = 0;
  for (;;) {
    const begun = performance.now();
    await editor.request('textDocument/hover', { textDocument: { uri }, position: { line: 1, character: 1 } });
    longest = Math.max(longest, performance.now() - begun);
    if (await isRead(editor)) return longest;
    await pause(10);
  }
}

async function reading(editor: Editor, uri: string, what: string, begun: number): Promise<void> {
  const before = processorTime(editor);
  const longest = await longestWait(editor, uri);
  const used = (processorTime(editor) - before).toFixed(1);
  console.log(
    `${what}: ${count} logs in ${since(begun)} (${used} s of the processor), longest wait for an answer ${Math.round(longest)} ms`,
  );
}

const folder = folderOf(count);
const { ours } = await buildServers();
const editor = new Editor({ file: ours.file, remove: () => {} });
try {
  const uri = pathToFileURL(path.join(folder, 'w0.well')).href;
  const begun = performance.now();
  await editor.beginIn(pathToFileURL(folder).href);
  await editor.open(uri, samples[0] ?? '');
  await editor.report(uri, 1);
  console.log(`findings of the open log: ${since(begun)} after the start`);
  await reading(editor, uri, 'folder opened', begun);
  const settings = path.join(folder, 'drillhand.json');
  writeFileSync(settings, '{"rules": {"missing-shoe": "hint"}}');
  const saved = performance.now();
  await editor.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: pathToFileURL(settings).href, type: 1 }] });
  await pause(50);
  await reading(editor, uri, 'settings changed', saved);
  const status = readFileSync(`/proc/${editor.process.pid}/status`, 'utf8');
  console.log(`memory: ${Math.round((Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) * 1024) / 1e6)} MB`);
  await editor.end();
} finally {
  editor.stop();
  rmSync(folder, { recursive: true, force: true });
}
