import { parseText } from '../../../grammar/index.ts';
import { readLine, startOfFile } from '../../../grammar/sections.ts';
import type { Term } from '../../../grammar/terms/term.ts';
import type { Line } from '../../../grammar/tree.ts';
import { meaningOf } from '../../../grammar/write.ts';
import { wordsOf } from '../../../server/features/words.ts';

const shortest = ({ short }: Term, written: string): string =>
  [...short, written].sort((a, b) => a.length - b.length)[0] ?? written;

const means = (text: string, line: Line): boolean => {
  const context = { ...startOfFile, section: line.section, hasString: true };
  return meaningOf(readLine(text, context).line) === meaningOf(line);
};

/** The line with one stretch written otherwise, where it then still says the same. */
const ifSame = (line: Line, text: string, otherwise: string): string => (means(otherwise, line) ? otherwise : text);

/** Words in their shortest form, from the last to the first, so that columns stay. */
function shortened(line: Line): string {
  let text = line.text;
  for (const { start, end, term } of [...wordsOf(line)].sort((a, b) => b.start - a.start)) {
    const short = text.slice(0, start) + shortest(term, text.slice(start, end)) + text.slice(end);
    text = ifSame(line, text, short);
  }
  return text;
}

/** No more blanks and commas than the line needs. */
function squeezed(line: Line, text: string): string {
  const tight = text.trim().replace(/\s+/g, ' ');
  const tries: readonly ((text: string) => string)[] = [
    (each) => each.replaceAll(',', ''),
    (each) => each.replace(/^- /, '-'),
    (each) => each.replaceAll(' - ', '-'),
    (each) => each.replaceAll(' and ', '&'),
    (each) => each.replace(' ; ', ';'),
  ];
  return tries.reduce((held, otherwise) => ifSame(line, held, otherwise(held)), tight);
}

/** A log as one who knows the short forms types it: the same meaning in fewer letters. Comments and empty lines are left out. */
export const hurried = (text: string): readonly string[] =>
  parseText(text)
    .lines.filter((line) => line.row !== null)
    .map((line) => squeezed(line, shortened(line)));
