import { XMLParser } from 'fast-xml-parser';

export interface XmlContent {
  readonly elements: Set<string>;
  readonly attributes: Set<string>;
  readonly texts: string[];
}

type Node = { readonly [name: string]: unknown };

function walk(nodes: readonly Node[], found: XmlContent): void {
  for (const [name, inner] of nodes.flatMap((node) => Object.entries(node))) {
    if (name === '#text') found.texts.push(String(inner));
    else if (name === ':@') for (const attribute of Object.keys(inner as object)) found.attributes.add(attribute);
    else {
      found.elements.add(name);
      walk(inner as Node[], found);
    }
  }
}

/** The names of elements and attributes, and every text, as a general XML parser reads them. */
export function readXml(xml: string): XmlContent {
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: '',
    htmlEntities: true,
    trimValues: false,
    parseTagValue: false,
    preserveOrder: true,
  });
  const found: XmlContent = { elements: new Set(), attributes: new Set(), texts: [] };
  walk(parser.parse(xml) as Node[], found);
  return found;
}
