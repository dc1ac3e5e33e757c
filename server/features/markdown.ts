const marks = /[\\`*_[\]#!|<>~&$@]/g;

/** What is not a sentence of letters, figures and plain marks, of which Markdown takes nothing for something else. */
const notPlain = /[^a-z\d ,;.()'-]| {2}|^[^a-z]| $|www/i;

/** Plain text as Markdown that shows it as it is: no mark of it is read as one, no address becomes a link. */
export const escapeMarkdown = (text: string): string => (notPlain.test(text) ? escaped(text) : text);

const escaped = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(marks, '\\$&')
    .replace(/^([-+=])/, '\\$1')
    .replace(/^(\d+)([.)])(?= |$)/, '$1\\$2')
    .replace(/:(?=\/\/)|(?<=mailto|xmpp):/gi, '\\:')
    .replace(/(?<=www)\./gi, '\\.');

/** A stretch of text in the typeface of code, whatever backticks it holds. */
export function codeSpan(text: string): string {
  const plain = text.replace(/\s+/g, ' ').trim();
  if (plain === '') return '';
  const longest = Math.max(0, ...[...plain.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  const gap = longest > 0 ? ' ' : '';
  return `${fence}${gap}${plain}${gap}${fence}`;
}

/** Lines of notation as a block of code. */
export function codeBlock(text: string): string {
  const longest = Math.max(2, ...[...text.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  return `${fence}drillhand\n${text}\n${fence}`;
}

/** Paragraphs, empty ones left out. */
export const paragraphs = (parts: readonly (string | null)[]): string => parts.filter(Boolean).join('\n\n');

/** Lines of one paragraph, empty ones left out. */
export const lines = (parts: readonly (string | null)[]): string => parts.filter(Boolean).join('  \n');
