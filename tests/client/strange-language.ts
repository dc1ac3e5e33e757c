const wideLetter = (letter: string): string => String.fromCharCode(letter.charCodeAt(0) + 0xfee0);

/** A text in a language that is nobody's: in guillemets and wide letters, its placeholders kept. */
const strange = (text: string): string =>
  `«${text.replace(/\{\d+\}|[A-Za-z]/g, (each) => (each.length === 1 ? wideLetter(each) : each))}»`;

/** A bundle that has every text, in that language: what is read in plain letters was never looked up. */
export const strangeBundle = new Proxy<{ [key: string]: string }>({}, { get: (_, key) => strange(String(key)) });

/** The same for so many texts, as plain data that may be sent. */
export const strangeTexts = (texts: readonly string[]): { readonly [english: string]: string } =>
  Object.fromEntries(texts.map((text) => [text, strange(text)]));
