import { lineAt } from './lines.ts';
import { tooltip, words } from './page-parts.ts';

const away = 12;

const partOf = (target: EventTarget | null): Element | null =>
  target instanceof Element ? target.closest('svg [data-line]') : null;

/** Beside a point of the window, on the side where there is room. */
function placeAt(x: number, y: number): void {
  const { width, height } = tooltip.getBoundingClientRect();
  const left = x + away + width > window.innerWidth ? x - away - width : x + away;
  const top = y + away + height > window.innerHeight ? y - away - height : y + away;
  tooltip.style.left = `${Math.max(2, left)}px`;
  tooltip.style.top = `${Math.max(2, top)}px`;
}

function show(part: Element, x: number, y: number): void {
  const name = part.getAttribute('aria-label') ?? '';
  tooltip.textContent = `${name}\n${words('lineHint', (lineAt(part) ?? 0) + 1)}`;
  tooltip.hidden = false;
  placeAt(x, y);
}

export const hideTooltip = (): void => {
  tooltip.hidden = true;
};

function showUnderPointer(event: PointerEvent): void {
  const part = partOf(event.target);
  if (part) show(part, event.clientX, event.clientY);
  else if (event.target !== tooltip) hideTooltip();
}

function showAtFocus(target: EventTarget | null): void {
  const part = partOf(target);
  const box = part?.getBoundingClientRect();
  if (!part || !box) hideTooltip();
  else
    show(part, Math.min(box.right, window.innerWidth * 0.6), Math.min(Math.max(box.top, 0), window.innerHeight * 0.8));
}

/** Says what a part of a drawing is, under the pointer and where the keyboard is; Escape takes it away. */
export function explainParts(body: HTMLElement): void {
  document.addEventListener('pointermove', showUnderPointer);
  document.documentElement.addEventListener('pointerleave', hideTooltip);
  body.addEventListener('focusin', (event) => showAtFocus(event.target));
  body.addEventListener('focusout', hideTooltip);
  window.addEventListener('scroll', hideTooltip, { passive: true });
  document.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') hideTooltip();
  });
}
