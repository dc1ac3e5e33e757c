import { keep, kept, tell } from './editor.ts';
import { lineAt } from './lines.ts';
import { nearestLine } from './nearest-line.ts';
import { onPress, setPressed, toolbar } from './page-parts.ts';

let tied = false;
/** Where the text has put the page: a scroll to there is its echo, however late it comes. */
let putAt = -1;

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
  if (!nearest) return;
  window.scrollBy(0, nearest.getBoundingClientRect().top - underToolbar());
  putAt = window.scrollY;
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
  if (!tied || Math.abs(window.scrollY - putAt) < 2) return;
  putAt = -1;
  const line = topmostLine();
  if (line !== null) tell({ type: 'scrolled', line });
}

/** Ties the scrolling of the page to that of the text, where the reader wants it. */
export function tieScrolling(): void {
  let isAsked = false;
  show(kept().tied ?? false);
  onPress('tie', () => {
    show(!tied);
    keep({ tied });
    tell({ type: 'tied', tied });
    tellScroll();
  });
  window.addEventListener(
    'scroll',
    () => {
      if (isAsked) return;
      isAsked = true;
      requestAnimationFrame(() => {
        isAsked = false;
        tellScroll();
      });
    },
    { passive: true },
  );
}
