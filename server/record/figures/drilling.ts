import { about as ofPenetration, penetrationRate } from '../../calculations/air/penetration-rate.ts';
import { about as ofUphole, upholeVelocity } from '../../calculations/air/uphole-velocity.ts';
import type { DrilledInterval, Drilling, FileUnits, Word } from '../../model/log.ts';
import type { RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { type Bore, boreAbove, type WidestBore } from '../geometry/drilling-walls.ts';
import { nameOf } from '../geometry/strings.ts';
import { type Ingredient, lengthOf, measured, worked } from '../ingredient.ts';
import { inDoubt, stretchOf } from '../intervals.ts';
import type { Figure } from '../record.ts';
import { stretchText } from '../words.ts';
import type { Family } from './family.ts';

/** `drilling.N.penetration-rate` and `.uphole-velocity`, N counting the lines under `drilling` through the file. */
export const drillingFigures: Family = (context) => {
  const figures: Figure[] = [];
  const widestAbove = boreAbove(context.log, context.hole);
  let number = 0;
  for (const drilling of context.log.drilling) {
    for (const interval of drilling.intervals) {
      number += 1;
      figures.push(penetrationFigure(number, interval, context.log.units));
      if (!usesAir(drilling, interval)) continue;
      figures.push(upholeFigure(number, drilling, interval, context, widestAbove));
    }
  }
  return figures;
};

function penetrationFigure(number: number, interval: DrilledInterval, units: FileUnits): Figure {
  const { line } = interval;
  return figureOf(
    {
      id: `drilling.${number}.penetration-rate`,
      title: 'penetration rate',
      shown: 'velocity',
      formula: ofPenetration,
      ingredients: [
        lengthOf('length drilled', interval.interval, line, 'the interval drilled'),
        measured('time taken', interval.time, 's', line, 'the time that the interval took'),
      ],
      compute: penetrationRate,
      at: interval,
    },
    units,
  );
}

const airy = new Set(['air', 'air-water', 'mist', 'foam']);
const isAir = ({ id }: Word): boolean => airy.has(id);

/** The line's own flush counts, else that of the head; a head that gives a flow and no flush is taken at its word. */
function usesAir(drilling: Drilling, { flush }: DrilledInterval): boolean {
  if (flush.length > 0) return flush.some(isAir);
  if (drilling.flush.length > 0) return drilling.flush.some(isAir);
  return drilling.airRate !== null;
}

function upholeFigure(
  number: number,
  drilling: Drilling,
  interval: DrilledInterval,
  { log }: RecordContext,
  widestAbove: ReturnType<typeof boreAbove>,
): Figure {
  const { units } = log;
  const bit = stretchOf(interval.interval);
  const widest = bit ? widestAbove(bit, ownBore(drilling, interval)) : null;
  return figureOf(
    {
      id: `drilling.${number}.uphole-velocity`,
      title: 'uphole velocity at the slowest place',
      shown: 'velocity',
      formula: ofUphole,
      ingredients: [
        measured('air rate', drilling.airRate, 'm3/s', drilling.line, 'the air rate of the compressor'),
        boreIngredient(widest, units),
        measured('drill pipe', drilling.pipe, 'm', drilling.line, 'the outside diameter of the drill pipe'),
      ],
      compute: upholeVelocity,
      at: interval,
    },
    units,
  );
}

/** The hole that the bit makes, where its size is written on the line or in the head. */
function ownBore(drilling: Drilling, interval: DrilledInterval): Bore | null {
  const bit = interval.bit?.value != null ? interval.bit : drilling.bit;
  if (bit?.value == null) return null;
  return { diameter: bit.value, line: bit.span.line, string: null, doubtful: inDoubt(bit) };
}

function boreIngredient(widest: WidestBore | null, units: FileUnits): Ingredient {
  if (!widest) return worked('widest bore', null, 'diameter', units, { waitsFor: ['the interval drilled'] });
  if (!widest.known) {
    const what = widest.string ? `inside diameter of ${nameOf(widest.string)}` : 'diameter of the hole';
    const fact = `the ${what}, ${stretchText(widest.missing, units)}`;
    return worked('widest bore', null, 'diameter', units, { waitsFor: [fact] });
  }
  const { of } = widest.bore;
  const name = `widest bore, ${of.string ? `inside ${nameOf(of.string)}` : 'hole'}, ${stretchText(widest.bore, units)}`;
  return worked(name, of.diameter, 'diameter', units, { line: of.line, doubtful: of.doubtful });
}
