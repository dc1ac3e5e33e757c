import type { Span } from '../../grammar/span.ts';

export interface MarkedText {
  /** The text without its marks. */
  readonly text: string;
  /** What stood between `[[` and `]]`, in the order of the text; each within one line. */
  readonly spans: readonly Span[];
}

function readLine(marked: string, line: number): { text: string; spans: Span[] } {
  const spans: Span[] = [];
  let text = '';
  let start: number | null = null;
  for (const part of marked.split(/(\[\[|\]\])/)) {
    if (part === '[[') start = text.length;
    else if (part === ']]' && start !== null) {
      spans.push({ line, start, end: text.length });
      start = null;
    } else text += part;
  }
  if (start !== null) throw new Error(`a mark is not closed on line ${line + 1}: ${marked}`);
  return { text, spans };
}

/** Takes the marks `[[` and `]]` out of a text, and tells what they stood around. Throws where one is not closed. */
export function readMarked(marked: string): MarkedText {
  const lines = marked.split('\n').map(readLine);
  return { text: lines.map(({ text }) => text).join('\n'), spans: lines.flatMap(({ spans }) => spans) };
}
