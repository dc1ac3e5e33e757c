import { lineAt, markCursorLine } from './lines.ts';
import type { FromPage, KeptState, ToPage } from './messages.ts';
import { showSections } from './sections.ts';

interface EditorApi {
  postMessage(message: FromPage): void;
  getState(): KeptState | undefined;
  setState(state: KeptState): void;
}

declare function acquireVsCodeApi(): EditorApi;

const editor = acquireVsCodeApi();
const byId = (id: string): HTMLElement => document.getElementById(id) ?? document.body;
const body = byId('body');
const trouble = byId('trouble');
const announcement = byId('announcement');

let cursor = { line: -1, scrollIntoView: false };
let scrollTopToRestore = editor.getState()?.scrollTop ?? 0;

const keepState = (): void => editor.setState({ uri: document.body.dataset.uri ?? '', scrollTop: window.scrollY });

function announceSummary(): void {
  const summary = body.querySelector('[data-summary]')?.textContent?.trim() ?? '';
  if (announcement.textContent !== summary) announcement.textContent = summary;
}

function show(html: string): void {
  trouble.hidden = true;
  if (!showSections(body, html)) return;
  announceSummary();
  markCursorLine(body, cursor.line, false);
  if (scrollTopToRestore > 0) window.scrollTo(0, scrollTopToRestore);
  scrollTopToRestore = 0;
}

function tell(message: string): void {
  trouble.textContent = message;
  trouble.hidden = false;
}

function followCursor(to: { line: number; scrollIntoView: boolean }): void {
  if (to.line !== cursor.line) markCursorLine(body, to.line, to.scrollIntoView);
  cursor = to;
}

function take(message: ToPage): void {
  if (message.type === 'show') show(message.html);
  else if (message.type === 'trouble') tell(message.message);
  else followCursor(message);
}

function revealLineOf(target: EventTarget | null): boolean {
  const line = lineAt(target);
  if (line !== null) editor.postMessage({ type: 'reveal', line });
  return line !== null;
}

const isSelectingText = (): boolean => !(window.getSelection()?.isCollapsed ?? true);

window.addEventListener('message', (event: MessageEvent<ToPage>) => take(event.data));
window.addEventListener('scroll', keepState, { passive: true });
body.addEventListener('click', (event) => {
  if (!isSelectingText()) revealLineOf(event.target);
});
body.addEventListener('keydown', (event) => {
  if (event.key === 'Enter' && revealLineOf(event.target)) event.preventDefault();
});
keepState();
editor.postMessage({ type: 'ready' });
