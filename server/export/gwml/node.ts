/** An element of XML: its name with its prefix, its attributes, and what is in it. */
export interface XmlNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (XmlNode | string)[];
}

type Child = XmlNode | string | null | readonly (XmlNode | null)[];

const flat = (children: readonly Child[]): (XmlNode | string)[] =>
  children
    .flatMap((child): readonly (XmlNode | string | null)[] => (isList(child) ? child : [child]))
    .filter((child) => child !== null);

const isList = (child: Child): child is readonly (XmlNode | null)[] => Array.isArray(child);

/** An element; null among its children is left out. */
export const node = (
  name: string,
  attributes: Readonly<Record<string, string>> = {},
  ...children: Child[]
): XmlNode => ({
  name,
  attributes,
  children: flat(children),
});

/** An element with text, or null where there is no text. */
export const textNode = (name: string, text: string | null | undefined): XmlNode | null =>
  text ? node(name, {}, text) : null;

/** A reference that only names what it means: no register of the trade's words is taken for granted. */
export const titled = (name: string, title: string | null | undefined): XmlNode | null =>
  title ? node(name, { 'xlink:title': title }) : null;
