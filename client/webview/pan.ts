import { keep } from './editor.ts';

/* A hand is not still: less than this, in pixels, is a click. */
const still = 4;

interface Drag {
  readonly figure: HTMLElement;
  x: number;
  y: number;
  moved: boolean;
}

const isWiderThanItsPlace = (figure: HTMLElement): boolean => figure.scrollWidth > figure.clientWidth + 1;

function move(drag: Drag, event: PointerEvent): void {
  const [dx, dy] = [event.clientX - drag.x, event.clientY - drag.y];
  if (!drag.moved && Math.hypot(dx, dy) < still) return;
  drag.moved = true;
  drag.figure.classList.add('dragged');
  drag.figure.scrollBy(-dx, 0);
  window.scrollBy(0, -dy);
  [drag.x, drag.y] = [event.clientX, event.clientY];
}

/** Lets a drawing that is larger than its place be drawn along with the mouse. A drag is no click. */
export function pannable(body: HTMLElement): void {
  let drag: Drag | null = null;
  body.addEventListener('pointerdown', (event) => {
    const figure = event.target instanceof Element ? event.target.closest<HTMLElement>('figure') : null;
    if (!figure || event.button !== 0 || event.pointerType === 'touch' || !isWiderThanItsPlace(figure)) return;
    drag = { figure, x: event.clientX, y: event.clientY, moved: false };
  });
  document.addEventListener('pointermove', (event) => {
    if (drag) move(drag, event);
  });
  document.addEventListener('pointerup', () => drag?.figure.classList.remove('dragged'));
  document.addEventListener(
    'click',
    (event) => {
      if (drag?.moved) event.stopPropagation();
      drag = null;
    },
    true,
  );
  body.addEventListener('scroll', (event) => keep({ drawingLeft: (event.target as HTMLElement).scrollLeft }), true);
}
