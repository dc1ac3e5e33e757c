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

/** What makes an element lead to its line: the line, and a place in the order of the Tab key where it can be followed. */
export const fromLine = (line: number | null, reachable: boolean): Attributes =>
  line === null ? {} : { 'data-line': line, tabindex: reachable ? 0 : null };

/** A section of the page under its heading. */
export const section = (id: string, title: string, inner: string): string =>
  element('section', { 'data-section': id, 'aria-label': title }, `\n${textElement('h2', {}, title)}\n${inner}\n`);
