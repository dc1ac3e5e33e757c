import type { Contender } from './contender.ts';

const layer = /^\s*(?:(\d+(?:\.\d+)?)\s*)?-\s*(\d+(?:\.\d+)?)\s+([a-z ]+(?:,[a-z ]+)*)\s*(?:;.*)?$/i;

const count = (lines: readonly string[]): number => {
  let read = 0;
  for (const line of lines) if (layer.test(line)) read += 1;
  return read;
};

/** A bare line scanner: it splits the text and tries one pattern on each line; the least that reading can cost. */
export const scanner: Contender = {
  name: 'bare line scanner',
  notation: 'well',
  open: (text) => {
    const lines = text.split('\n');
    const edit = ({ line, character }: { line: number; character: number }, letter: string): number => {
      const old = lines[line] ?? '';
      lines[line] = old.slice(0, character) + letter + old.slice(character + 1);
      return count(lines);
    };
    return { checked: { edit }, findings: count(lines) };
  },
};
