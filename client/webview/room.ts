/* At this share of the letters' size a millimetre of the drawing has its small print read like the page's. */
const emPerMm = 0.325;
const stepMm = 5;
/* From here on the drawing has all the room that it asks for. */
const enough = 190;

/** The width in mm that a drawing has to fit into, in steps, so that not every pixel asks for another drawing. */
export function roomFor(width: number, fontSize: number): number {
  const mm = width / (fontSize * emPerMm);
  return Math.min(enough, Math.max(stepMm, Math.floor(mm / stepMm) * stepMm));
}

const fontSizeOf = (element: Element): number => Number.parseFloat(getComputedStyle(element).fontSize) || 13;

export const roomIn = (element: Element): number => roomFor(element.clientWidth, fontSizeOf(element));

/** Calls back when the room for drawings has changed by a step, once it has come to rest. */
export function onRoomChanged(element: Element, changed: () => void): void {
  let room = roomIn(element);
  let timer: ReturnType<typeof setTimeout> | undefined;
  new ResizeObserver(() => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const now = roomIn(element);
      if (now === room) return;
      room = now;
      changed();
    }, 150);
  }).observe(element);
}
