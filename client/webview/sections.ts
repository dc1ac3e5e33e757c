import type { ShownSection } from './messages.ts';
import { prepareParts } from './parts.ts';

const sectionNamed = (body: Element, id: string): Element | undefined =>
  [...body.children].find((child) => child.getAttribute('data-section') === id);

function parsed(html: string): Element | null {
  const template = document.createElement('template');
  template.innerHTML = html;
  return template.content.firstElementChild;
}

/** Where the focus is: the how-manieth focusable part of its section; -1 where it is elsewhere. */
const focusWithin = (section: Element): number =>
  [...section.querySelectorAll('[tabindex]')].indexOf(document.activeElement ?? section);

/** The stretches that figures of a section are scrolled sideways, in order. */
const scrollsOf = (section: Element): number[] =>
  [...section.querySelectorAll('figure')].map((each) => each.scrollLeft);

function replaceKeepingPlace(shown: Element, fresh: Element): void {
  const focused = focusWithin(shown);
  const scrolls = scrollsOf(shown);
  shown.replaceWith(fresh);
  for (const [n, figure] of [...fresh.querySelectorAll('figure')].entries()) figure.scrollLeft = scrolls[n] ?? 0;
  if (focused >= 0) fresh.querySelectorAll<HTMLElement>('[tabindex]')[focused]?.focus({ preventScroll: true });
}

function freshSection(html: string | null): Element | null {
  const fresh = html === null ? null : parsed(html);
  if (fresh) prepareParts(fresh);
  return fresh;
}

function place(body: Element, { id, html }: ShownSection, index: number): boolean {
  const shown = sectionNamed(body, id);
  const fresh = freshSection(html);
  if (shown && fresh) replaceKeepingPlace(shown, fresh);
  const standing = fresh ?? shown;
  if (standing && body.children[index] !== standing) body.insertBefore(standing, body.children[index] ?? null);
  return fresh !== null;
}

/**
 * Makes `body` show the sections, and touches only those that have changed, so that scroll and focus stay.
 * @returns whether anything changed
 */
export function showSections(body: Element, sections: readonly ShownSection[]): boolean {
  const changed = sections.map((section, index) => place(body, section, index));
  const surplus = [...body.children].slice(sections.length);
  for (const section of surplus) section.remove();
  return changed.includes(true) || surplus.length > 0;
}
