import { keep, kept, tell } from './editor.ts';
import { Lead } from './lead.ts';
import { lineAt } from './lines.ts';
import { nearestLine } from './nearest-line.ts';
import { onPress, setPressed, toolbar } from './page-parts.ts';

let tied = false;
const lead = new Lead();

const underToolbar = (): number => toolbar.getBoundingClientRect().bottom + 2;

function show(now: boolean): void {
  tied = now;
  setPressed('tie', now);
}

/** The setting of the editor, which holds as long as this preview was not told otherwise. */
export const tieAsSet = (now: boolean): void => show(kept().tied ?? now);

const distance = (part: Element): number => Math.abs(part.getBoundingClientRect().top - underToolbar());

/** Brings what comes from the line to the top, taking of several such parts the one that is nearest to it. */
export function scrollToLine(body: Element, line: number): void {
  const parts = [...body.querySelectorAll('[data-line]')];
  const wanted = nearestLine(
    parts.map((part) => lineAt(part) ?? 0),
    line,
  );
  const [nearest] = parts.filter((part) => lineAt(part) === wanted).sort((a, b) => distance(a) - distance(b));
  lead.follow();
  if (nearest) window.scrollBy(0, nearest.getBoundingClientRect().top - underToolbar());
}

/** The line of what stands highest in the window, looked for down to its middle. */
function topmostLine(): number | null {
  for (let y = underToolbar(); y < window.innerHeight / 2; y += 12)
    for (const share of [0.15, 0.4, 0.75]) {
      const line = lineAt(document.elementFromPoint(window.innerWidth * share, y));
      if (line !== null) return line;
    }
  return null;
}

function tellScroll(): void {
  if (!tied) return;
  const line = topmostLine();
  if (line !== null) tell({ type: 'scrolled', line });
}

/** Follows what the reader's hand does on the page; a scroll bar tells when it is taken, but not when it is let go. */
function watchTheHand(): void {
  for (const act of ['wheel', 'touchmove', 'keydown'])
    window.addEventListener(act, ({ timeStamp }) => lead.act(timeStamp), { passive: true, capture: true });
  window.addEventListener('pointerdown', () => lead.hold(), true);
  for (const end of ['pointerup', 'pointercancel', 'pointermove'] as const)
    window.addEventListener(end, ({ buttons, timeStamp }) => buttons === 0 && lead.letGo(timeStamp), true);
}

/** Ties the scrolling of the page to that of the text, where the reader wants it. */
export function tieScrolling(): void {
  let isAsked = false;
  watchTheHand();
  show(kept().tied ?? false);
  onPress('tie', () => {
    show(!tied);
    keep({ tied });
    tell({ type: 'tied', tied });
    tellScroll();
  });
  window.addEventListener(
    'scroll',
    ({ timeStamp }) => {
      if (!lead.scrolls(timeStamp) || isAsked) return;
      isAsked = true;
      requestAnimationFrame(() => {
        isAsked = false;
        tellScroll();
      });
    },
    { passive: true },
  );
}
