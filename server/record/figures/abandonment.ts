import type { Formula } from '../../calculations/formula.ts';
import type { Fill } from '../../model/log.ts';
import { boreIngredient } from '../bore-ingredient.ts';
import type { RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { openBore } from '../geometry/open-bore.ts';
import { measured } from '../ingredient.ts';
import { intervalInDoubt, stretchOf } from '../intervals.ts';
import type { Figure } from '../record.ts';
import type { Family } from './family.ts';

const about: Formula = {
  name: 'volume to seal',
  text: 'V = ∑ π/4 D² Δz; D inside of the string left in place, else of the hole, Δz length, m; V m³',
  source: 'geometry',
  range: null,
  caution:
    'Voids, fractures and an open annulus take more: measure the top as it is placed, and follow the local code.',
};

/** `abandonment.N.volume` and `.placed-volume`, N counting the lines under `abandonment` through the file. */
export const abandonmentFigures: Family = (context) => {
  const fills = context.log.abandonments.flatMap((each) => each.fills);
  if (fills.length === 0) return [];
  const bore = openBore(context.log, context.hole);
  return fills.flatMap((fill, index) => figuresOf(fill, index + 1, bore, context));
};

function figuresOf(fill: Fill, number: number, bore: ReturnType<typeof openBore>, { log }: RecordContext): Figure[] {
  const stretch = stretchOf(fill.interval);
  const preferred = fill.volume?.unitWritten ? fill.volume.unit : null;
  const missing = measured('interval', null, 'm', fill.line, 'the depths that were sealed');
  const volume = stretch ? boreIngredient(bore, stretch, log.units) : missing;
  const common = { shown: 'volume', at: fill, preferred, compute: (value: number) => value } as const;
  const figures = [
    figureOf(
      {
        ...common,
        id: `abandonment.${number}.volume`,
        title: 'volume to seal',
        formula: about,
        ingredients: [{ ...volume, doubtful: volume.doubtful || intervalInDoubt(fill.interval) }],
      },
      log.units,
    ),
  ];
  if (!fill.volume) return figures;
  const placed = measured('placed volume', fill.volume, 'm3', fill.line, 'the volume placed');
  const formula = { ...about, name: 'volume placed', text: 'as written in the log', source: 'the log', caution: null };
  const id = `abandonment.${number}.placed-volume`;
  return [
    ...figures,
    figureOf({ ...common, id, title: 'volume placed', formula, ingredients: [placed], digits: 'sum' }, log.units),
  ];
}
