/** The text that each section was last made from: the page's own marks on a section do not make it a changed one. */
const sources = new Map<string, string>();

const nameOf = (section: Element, index: number): string => section.getAttribute('data-section') ?? `section ${index}`;

const parse = (html: string): Element[] => {
  const template = document.createElement('template');
  template.innerHTML = html;
  return [...template.content.children];
};

/** Where the focus is: the how-manieth focusable part of its section. */
function focusWithin(section: Element): number {
  return [...section.querySelectorAll('[tabindex]')].indexOf(document.activeElement ?? section);
}

function focusPart(section: Element, index: number): void {
  const part = section.querySelectorAll<HTMLElement>('[tabindex]')[index];
  part?.focus({ preventScroll: true });
}

function replaceKeepingFocus(shown: Element, fresh: Element): void {
  const focused = focusWithin(shown);
  shown.replaceWith(fresh);
  if (focused >= 0) focusPart(fresh, focused);
}

function place(body: Element, fresh: Element, name: string, index: number): boolean {
  const source = fresh.outerHTML;
  const shown = [...body.children].find((child, position) => nameOf(child, position) === name);
  const isUnchanged = shown !== undefined && sources.get(name) === source;
  sources.set(name, source);
  if (shown !== undefined && !isUnchanged) replaceKeepingFocus(shown, fresh);
  const standing = isUnchanged ? shown : fresh;
  if (body.children[index] !== standing) body.insertBefore(standing, body.children[index] ?? null);
  return !isUnchanged;
}

/**
 * Makes `body` show the fragment, and touches only the sections whose text has changed, so that scroll and focus stay.
 * @returns whether anything changed
 */
export function showSections(body: Element, html: string): boolean {
  const fresh = parse(html);
  const changed = fresh.map((section, index) => place(body, section, nameOf(section, index), index));
  const surplus = [...body.children].slice(fresh.length);
  for (const section of surplus) section.remove();
  return changed.includes(true) || surplus.length > 0;
}
