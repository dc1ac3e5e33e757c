/** The line, from 0, that an element of the page comes from; null where it comes from none. */
export function lineAt(target: EventTarget | null): number | null {
  const line = target instanceof Element ? target.closest('[data-line]')?.getAttribute('data-line') : null;
  return line && /^\d+$/.test(line) ? Number(line) : null;
}

/** Marks what comes from the cursor's line, and nothing else; `scroll` brings the first such part into view. */
export function markCursorLine(body: Element, line: number, scroll: boolean): void {
  for (const marked of body.querySelectorAll('.at-cursor')) marked.classList.remove('at-cursor');
  const parts = body.querySelectorAll(`[data-line="${line}"]`);
  for (const part of parts) part.classList.add('at-cursor');
  if (scroll) parts[0]?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
}
