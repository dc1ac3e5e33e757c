import { escapeText } from './escape.ts';

/** Attributes of an element; those that are null are left out. */
export interface Attributes {
  readonly [name: string]: string | number | null;
}

const attributesText = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => (value === null ? '' : ` ${name}="${escapeText(String(value))}"`))
    .join('');

/** An element around HTML that is already safe. */
export const element = (name: string, attributes: Attributes, inner: string): string =>
  `<${name}${attributesText(attributes)}>${inner}</${name}>`;

/** An element around plain text. */
export const textElement = (name: string, attributes: Attributes, text: string): string =>
  element(name, attributes, escapeText(text));

/** What makes an element lead to its line. */
export const fromLine = (line: number | null): Attributes => (line === null ? {} : { 'data-line': line });

/**
 * The words that name what comes from a line; where the page is `reachable`, a stop of the Tab key that a reader of the
 * screen is told to be a link. It stands inside the element that leads to the line.
 */
export const lineName = (line: number | null, text: string, reachable: boolean): string =>
  line === null || !reachable
    ? escapeText(text)
    : textElement('span', { class: 'to-line', role: 'link', tabindex: 0 }, text || '?');

/** One section of a page; `id` is unique in the page. */
export interface PageSection {
  readonly id: string;
  readonly html: string;
}

/** A section under its heading. */
export const section = (id: string, title: string, inner: string): PageSection => ({
  id,
  html: element(
    'section',
    { 'data-section': id, 'aria-label': title },
    `\n${textElement('h2', {}, title)}\n${inner}\n`,
  ),
});
