/* Each of these is one stop of the Tab key; the arrow keys go through it. */
const groups = 'svg.dh-drawing, table, ul.findings, ul.cautions';

const stopsOf = (group: Element): (HTMLElement | SVGElement)[] => [
  ...group.querySelectorAll<HTMLElement | SVGElement>('[tabindex]'),
];

/** Takes a drawing's titles off, which the browser would show in a box of its own, and keeps them as the parts' names. */
function nameParts(svg: Element): void {
  for (const title of svg.querySelectorAll('title')) {
    const part = title.parentElement;
    if (part?.hasAttribute('data-line')) {
      part.setAttribute('aria-label', title.textContent ?? '');
      part.setAttribute('aria-describedby', 'part-hint');
    }
    title.remove();
  }
}

/** Makes a section that has just been placed ready for keyboard and screen reader. */
export function prepareParts(section: Element): void {
  for (const svg of section.querySelectorAll('svg.dh-drawing')) nameParts(svg);
  for (const figure of section.querySelectorAll('figure')) {
    figure.setAttribute('tabindex', '0');
    figure.setAttribute('role', 'group');
    figure.setAttribute('aria-label', figure.querySelector('svg')?.getAttribute('aria-label') ?? '');
  }
  for (const group of section.querySelectorAll(groups))
    for (const [n, stop] of stopsOf(group).entries()) stop.tabIndex = n === 0 ? 0 : -1;
}

function becomeStop(stop: Element | null): void {
  const group = stop?.closest(groups);
  if (!group || !stop?.hasAttribute('tabindex')) return;
  for (const other of stopsOf(group)) if (other !== stop && other.tabIndex === 0) other.tabIndex = -1;
  (stop as HTMLElement).tabIndex = 0;
}

const steps: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowDown: (at, last) => Math.min(at + 1, last),
  ArrowRight: (at, last) => Math.min(at + 1, last),
  ArrowUp: (at) => Math.max(at - 1, 0),
  ArrowLeft: (at) => Math.max(at - 1, 0),
  Home: () => 0,
  End: (_, last) => last,
};

/** Moves the focus among the parts of a drawing or the rows of a table. @returns whether the key was one that does */
function stepFrom(target: EventTarget | null, key: string): boolean {
  const step = Object.hasOwn(steps, key) ? steps[key] : undefined;
  const group = target instanceof Element && target.hasAttribute('tabindex') ? target.closest(groups) : null;
  if (!step || !group) return false;
  const stops = stopsOf(group);
  const at = stops.indexOf(target as HTMLElement);
  stops[step(at, stops.length - 1)]?.focus();
  return at >= 0;
}

/** Lets the arrow keys go through each drawing and table, and the Tab key past it. */
export function walkByKeyboard(body: HTMLElement): void {
  body.addEventListener('focusin', (event) => becomeStop(event.target as Element | null));
  body.addEventListener('keydown', (event) => {
    const isPlain = !event.ctrlKey && !event.altKey && !event.metaKey && !event.shiftKey;
    if (isPlain && stepFrom(event.target, event.key)) event.preventDefault();
  });
}
