const replacements: Readonly<Record<string, string>> = {
  "'": '\u2018\u2019\u201b\u2032\u00b4',
  '"': '\u201c\u201d\u201e\u201f\u2033',
  '-': '\u2010\u2011\u2012\u2013\u2014\u2015\u2212\u00ad',
  x: '\u00d7',
  '2': '\u00b2',
  '3': '\u00b3',
  u: '\u00b5\u03bc',
  '/': '\u2044\u2215',
  '.': '\u00b7',
  ' ': '\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u200b\u202f\u205f\u3000\ufeff',
};

const plain = new Map(
  Object.entries(replacements).flatMap(([to, from]) => [...from].map((each) => [each, to] as const)),
);

const asciiOnly = /^[\t\x20-\x7e]*$/;

/**
 * Typography as a word processor leaves it (curly quotes, no-break blanks, `×`, `³`, long dashes), as plain
 * characters. Every character stays one character, so that columns stay what they are.
 */
export function plainCharacters(text: string): string {
  if (asciiOnly.test(text)) return text;
  let out = '';
  for (let i = 0; i < text.length; i++) {
    const character = text.charAt(i);
    out += plain.get(character) ?? character;
  }
  return out;
}

/** The values of the single-character fractions. */
export const vulgarFractions: ReadonlyMap<string, number> = new Map([
  ['¼', 1 / 4],
  ['½', 1 / 2],
  ['¾', 3 / 4],
  ['⅛', 1 / 8],
  ['⅜', 3 / 8],
  ['⅝', 5 / 8],
  ['⅞', 7 / 8],
]);

/** The lines of a text, ended by LF, CRLF or CR. */
export const splitLines = (text: string): string[] => text.split(/\r\n|\n|\r/);
