import type { Line } from '../../../grammar/tree.ts';
import type { Figure } from '../../record/record.ts';
import { figuresAt } from '../figures.ts';
import type { Hint, HintSource } from './hint.ts';

/** Where the item of a slot ends, else the depths of the line. */
const endOf = (line: Line, slot: string): number | null =>
  line.items.find((item) => item.slot === slot)?.end ?? line.depths?.end ?? null;

const aboutFigure = ({ title, text, formula, caution }: Figure): string =>
  [`${title}: ${text}`, formula, caution === null ? '' : `Caution: ${caution}`]
    .filter((each) => each !== '')
    .join('\n');

function hintOf(figure: Figure, line: Line, number: number, slot: string, words: string): readonly Hint[] {
  const column = endOf(line, slot);
  if (column === null || figure.value === null) return [];
  return [{ line: number, column, text: `${words}${figure.text}`, about: aboutFigure(figure) }];
}

const figureHints =
  (rows: ReadonlySet<string>, slot: string, named: (id: string) => boolean, words: string): HintSource =>
  ({ record }, line, number) => {
    if (line.row === null || !rows.has(line.row)) return [];
    const figure = figuresAt(record, number).find(({ id }) => named(id));
    return figure === undefined ? [] : hintOf(figure, line, number, slot, words);
  };

const fills = new Set(['grout', 'seal', 'plug', 'abandonment.line']);

/** The volume that a fill's place takes, with the allowance, beside the volume placed. */
export const requiredVolumeHints = figureHints(
  fills,
  'volume',
  (id) => id.endsWith('.required-volume') || /^abandonment\.\d+\.volume$/.test(id),
  'required ',
);

/** How fast the hole went, beside the time that the interval took. */
export const penetrationRateHints = figureHints(
  new Set(['drilling.line']),
  'time',
  (id) => id.endsWith('.penetration-rate'),
  '',
);
