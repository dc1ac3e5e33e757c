import XMLBuilder from 'fast-xml-builder';
import type { XmlNode } from './node.ts';

/* Characters that XML 1.0 (fifth edition, production 2) has no place for. */
const unknownToXml = /[^\t\n\r\x20-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const allowed = (text: string): string => text.replace(unknownToXml, '\ufffd');

/** An element as the builder takes it: its children under its name, its attributes beside them. */
type Ordered = { readonly [name: string]: unknown };

const orderedOf = ({ name, attributes, children }: XmlNode): Ordered => ({
  [name]: children.map((child) => (typeof child === 'string' ? { '#text': allowed(child) } : orderedOf(child))),
  ':@': Object.fromEntries(Object.entries(attributes).map(([key, value]) => [key, allowed(value)])),
});

const declaration: Ordered = { '?xml': [{ '#text': '' }], ':@': { version: '1.0', encoding: 'UTF-8' } };

/** A document as text, indented. Characters that XML has no place for become U+FFFD. */
export function xmlText(root: XmlNode): string {
  const builder = new XMLBuilder({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: '',
    suppressEmptyNode: true,
    format: true,
    indentBy: '  ',
  });
  return `${builder.build([declaration, orderedOf(root)]).trim()}\n`;
}
