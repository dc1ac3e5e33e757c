import * as l10n from '@vscode/l10n';
import type { Line } from '../../../grammar/tree.ts';
import type { Figure } from '../../record/record.ts';
import { figureCaution, figureFormula, figureText, figureTitle } from '../figure-words.ts';
import { figuresAt } from '../figures.ts';
import type { Hint, HintSource } from './hint.ts';

/** Where the item of a slot ends, else the depths of the line. */
const endOf = (line: Line, slot: string): number | null =>
  line.items.find((item) => item.slot === slot)?.end ?? line.depths?.end ?? null;

function aboutFigure(figure: Figure): string {
  const caution = figureCaution(figure);
  return [
    l10n.t('{0}: {1}', figureTitle(figure), figureText(figure)),
    figureFormula(figure),
    caution === null ? '' : l10n.t('Caution: {0}', caution),
  ]
    .filter((each) => each !== '')
    .join('\n');
}

type Wording = (figureText: string) => string;

function hintOf(figure: Figure, line: Line, number: number, slot: string, worded: Wording): readonly Hint[] {
  const column = endOf(line, slot);
  if (column === null || figure.value === null) return [];
  return [{ line: number, column, text: worded(figureText(figure)), about: () => aboutFigure(figure) }];
}

const figureHints =
  (rows: ReadonlySet<string>, slot: string, named: (id: string) => boolean, worded: Wording): HintSource =>
  ({ record }, line, number) => {
    if (line.row === null || !rows.has(line.row)) return [];
    const figure = figuresAt(record, number).find(({ id }) => named(id));
    return figure === undefined ? [] : hintOf(figure, line, number, slot, worded);
  };

const fills = new Set(['grout', 'seal', 'plug', 'abandonment.line']);

/** The volume that a fill's place takes, with the allowance, beside the volume placed. */
export const requiredVolumeHints = figureHints(
  fills,
  'volume',
  (id) => id.endsWith('.required-volume') || /^abandonment\.\d+\.volume$/.test(id),
  (volume) => l10n.t('required {0}', volume),
);

/** How fast the hole went, beside the time that the interval took. */
export const penetrationRateHints = figureHints(
  new Set(['drilling.line']),
  'time',
  (id) => id.endsWith('.penetration-rate'),
  (rate) => rate,
);
