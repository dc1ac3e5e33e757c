import { keep, kept } from './editor.ts';
import { onPress, setText } from './page-parts.ts';
import { zoomByKey, zoomStep, zoomWithin } from './zoom-steps.ts';

/** A point of the window that stays on the same place of the drawing while it is zoomed. */
interface Anchor {
  readonly x: number;
  readonly y: number;
}

function show(body: HTMLElement, zoom: number): void {
  body.style.setProperty('--dh-zoom', String(zoom));
  setText('zoom-fit', `${Math.round(zoom * 100)} %`);
}

const middleOf = (drawing: Element | null): Anchor => {
  const box = drawing?.getBoundingClientRect();
  if (!box) return { x: 0, y: 0 };
  return {
    x: (Math.max(box.left, 0) + Math.min(box.right, window.innerWidth)) / 2,
    y: (Math.max(box.top, 0) + Math.min(box.bottom, window.innerHeight)) / 2,
  };
};

function zoomAround(body: HTMLElement, drawing: Element | null, zoom: number, anchor: Anchor): void {
  const before = drawing?.getBoundingClientRect();
  show(body, zoom);
  keep({ zoom });
  const after = drawing?.getBoundingClientRect();
  if (!before || !after || before.width === 0 || before.height === 0) return;
  const across = after.left + ((anchor.x - before.left) / before.width) * after.width - anchor.x;
  const down = after.top + ((anchor.y - before.top) / before.height) * after.height - anchor.y;
  drawing?.closest('figure')?.scrollBy(across, 0);
  window.scrollBy(0, down);
}

const drawingAt = (body: HTMLElement, target: EventTarget | null): Element | null =>
  (target instanceof Element ? target.closest('figure') : null)?.querySelector('svg') ?? body.querySelector('svg');

/** Zoom of the drawings by buttons, by +, - and 0 while one has the focus, and by the wheel with Ctrl. */
export function zoomable(body: HTMLElement): void {
  const to = (zoom: number, target: EventTarget | null = null, anchor?: Anchor): void => {
    const drawing = drawingAt(body, target);
    zoomAround(body, drawing, zoomWithin(zoom), anchor ?? middleOf(drawing));
  };
  show(body, zoomWithin(kept().zoom));
  onPress('zoom-in', () => to(kept().zoom * zoomStep));
  onPress('zoom-out', () => to(kept().zoom / zoomStep));
  onPress('zoom-fit', () => to(1));
  body.addEventListener('keydown', (event) => {
    const isInDrawing = event.target instanceof Element && event.target.closest('figure') !== null;
    const zoom = zoomByKey(event.key, kept().zoom);
    if (!isInDrawing || zoom === null || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    to(zoom, event.target);
  });
  body.addEventListener(
    'wheel',
    (event) => {
      if (!event.ctrlKey || !(event.target instanceof Element) || !event.target.closest('figure')) return;
      event.preventDefault();
      to(kept().zoom * Math.exp(-event.deltaY / 300), event.target, { x: event.clientX, y: event.clientY });
    },
    { passive: false },
  );
}
