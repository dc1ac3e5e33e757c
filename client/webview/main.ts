import { offerColumns, onColumnsChosen } from './columns.ts';
import { keep, kept, tell } from './editor.ts';
import { lineAt, markCursorLine } from './lines.ts';
import type { ShownColumn, ShownSection, ToPage, Wishes } from './messages.ts';
import { announcement, body, onPress, trouble } from './page-parts.ts';
import { pannable } from './pan.ts';
import { walkByKeyboard } from './parts.ts';
import { takePicture } from './picture.ts';
import { onRoomChanged, roomIn } from './room.ts';
import { showSections } from './sections.ts';
import { scrollToLine, tieAsSet, tieScrolling } from './tied-scroll.ts';
import { explainParts } from './tooltip.ts';
import { zoomable } from './zoom.ts';

let cursor = { line: -1, scrollIntoView: false };
let isFirst = true;

const wishes = (): Wishes => ({ hidden: kept().hidden, widthMm: roomIn(body) });
const tellWishes = (): void => tell({ type: 'wishes', ...wishes() });

function announceSummary(): void {
  const summary = body.querySelector('[data-summary]')?.textContent?.trim() ?? '';
  if (announcement.textContent !== summary) announcement.textContent = summary;
}

/** Goes back to where the page stood before a reload. */
function restorePlace(): void {
  const { scrollTop, drawingLeft } = kept();
  isFirst = false;
  for (const figure of body.querySelectorAll('figure')) figure.scrollLeft = drawingLeft;
  if (scrollTop > 0) window.scrollTo(0, scrollTop);
}

function show(sections: readonly ShownSection[], columns: readonly ShownColumn[]): void {
  trouble.hidden = true;
  offerColumns(columns);
  if (!showSections(body, sections)) return;
  announceSummary();
  markCursorLine(body, cursor.line, false);
  if (isFirst) restorePlace();
}

function complain(message: string): void {
  trouble.textContent = message;
  trouble.hidden = false;
}

/* A page that has come back stays where it stood, until the cursor moves. */
const hasComeBack = (): boolean => cursor.line < 0 && kept().scrollTop > 0;

function followCursor(to: { line: number; scrollIntoView: boolean }): void {
  if (to.line !== cursor.line) markCursorLine(body, to.line, to.scrollIntoView && !hasComeBack());
  cursor = to;
}

function take(message: ToPage): void {
  if (message.type === 'show') show(message.sections, message.columns);
  else if (message.type === 'trouble') complain(message.message);
  else if (message.type === 'cursor') followCursor(message);
  else if (message.type === 'tied') tieAsSet(message.tied);
  else if (message.type === 'scroll') scrollToLine(body, message.line);
  else void takePicture(message);
}

function revealLineOf(target: EventTarget | null): boolean {
  const line = lineAt(target);
  if (line !== null) tell({ type: 'reveal', line });
  return line !== null;
}

const isSelectingText = (): boolean => !(window.getSelection()?.isCollapsed ?? true);

window.addEventListener('message', (event: MessageEvent<ToPage>) => take(event.data));
window.addEventListener('scroll', () => keep({ scrollTop: window.scrollY }), { passive: true });
body.addEventListener('click', (event) => {
  if (!isSelectingText()) revealLineOf(event.target);
});
body.addEventListener('keydown', (event) => {
  if (event.key === 'Enter' && revealLineOf(event.target)) event.preventDefault();
});
walkByKeyboard(body);
explainParts(body);
zoomable(body);
pannable(body);
tieScrolling();
onColumnsChosen(tellWishes);
onRoomChanged(body, tellWishes);
onPress('export', () => tell({ type: 'export' }));
keep({});
tell({ type: 'ready', tied: kept().tied, ...wishes() });
