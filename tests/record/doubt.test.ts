import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../server/record/record.ts';
import { recordOf } from './record-of.ts';

const folder = new URL('../../samples/', import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith('.well'));

interface Written {
  readonly line: number;
  readonly number: string;
  /** The log with another text in the number's place. */
  readonly with: (text: string) => string;
}

/** Every plain number of a log that is followed by a blank, a comma or the end of its line. */
function numbersIn(text: string): Written[] {
  const lines = text.split('\n');
  return lines.flatMap((line, at) =>
    line.startsWith('#')
      ? []
      : [...(line.split(';')[0] ?? '').matchAll(/(?<=[\s(])\d+(?:\.\d+)?(?=[\s,)]|$)/g)].map((match) => ({
          line: at,
          number: match[0],
          with: (other: string) =>
            lines.with(at, line.slice(0, match.index) + other + line.slice(match.index + match[0].length)).join('\n'),
        })),
  );
}

const figuresOf = (text: string): ReadonlyMap<string, Figure> =>
  new Map(recordOf(text).figures.map((figure) => [figure.id, figure]));

const times = ({ number, with: put }: Written, factor: number) =>
  figuresOf(put(String(Number((Number(number) * factor).toFixed(6)))));

describe('a value written as about', () => {
  test.each(names)('%s: makes every figure doubtful that moves with it', (name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    const base = figuresOf(text);
    const sure: string[] = [];
    let moved = 0;
    for (const written of numbersIn(text)) {
      const about = recordOf(written.with(`~${written.number}`));
      const isMarked = about.log.questions.some(
        ({ kind, span }) => kind === 'approximate' && span.line === written.line,
      );
      if (!isMarked) continue;
      const [more, less] = [times(written, 1.03), times(written, 0.97)];
      for (const { id, value, doubtful } of about.figures) {
        const values = [value, base.get(id)?.value, more.get(id)?.value, less.get(id)?.value];
        if (values.some((each) => each == null) || values[1] === values[2] || values[1] === values[3]) continue;
        moved += 1;
        if (!doubtful) sure.push(`line ${written.line + 1}, ${written.number}: ${id}`);
      }
    }
    expect(sure).toEqual([]);
    expect(moved).toBeGreaterThan(5);
  });
});
