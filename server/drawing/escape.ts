const escapes: Readonly<{ [mark: string]: string }> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/* XML 1.0 (fifth edition), production 2: what is no character of a document; lone surrogates among them. */
const notCharacters =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that must not reach the file
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/* What most texts are made of: nothing to replace, and so nothing to look at twice. */
const soundText = /^[\t\n\r\x20-\ud7ff]*$/;

/** Text without what XML cannot carry; each such character becomes the replacement character. */
export const cleanText = (text: string): string =>
  soundText.test(text) ? text : text.replace(notCharacters, '\ufffd');

/** Text made safe for the inside of an element and of a quoted attribute, in HTML and in XML. */
export function escapeText(text: string): string {
  const clean = cleanText(text);
  return /[&<>"']/.test(clean) ? clean.replace(/[&<>"']/g, (mark) => escapes[mark] ?? mark) : clean;
}
