import type { XmlNode } from './node.ts';

interface Builder {
  ele(name: string, attributes: Record<string, string>): Builder;
  txt(text: string): Builder;
}

function put(parent: Builder, { name, attributes, children }: XmlNode): void {
  const element = parent.ele(name, { ...attributes });
  for (const child of children) {
    if (typeof child === 'string') element.txt(child);
    else put(element, child);
  }
}

/** A document as text, indented. Characters that XML 1.0 has no place for become U+FFFD. */
export async function xmlText(root: XmlNode): Promise<string> {
  const { create } = await import('xmlbuilder2');
  const document = create({ version: '1.0', encoding: 'UTF-8', invalidCharReplacement: '\ufffd' });
  put(document as unknown as Builder, root);
  return `${document.end({ prettyPrint: true })}\n`;
}
