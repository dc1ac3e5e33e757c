import { deliveredAir, about as ofDelivered } from '../../calculations/air/delivered-air.ts';
import { about as ofPenetration, penetrationRate } from '../../calculations/air/penetration-rate.ts';
import { about as ofAtmosphere, standardAtmosphere } from '../../calculations/air/standard-atmosphere.ts';
import { about as ofUphole, upholeVelocity } from '../../calculations/air/uphole-velocity.ts';
import { about as ofLift, sparePressure } from '../../calculations/air/water-lift.ts';
import type { Formula, Outcome } from '../../calculations/formula.ts';
import { about as ofColumn, waterColumn } from '../../calculations/water/water-column.ts';
import type { DrilledInterval, Drilling, FileUnits, WaterLevel, WellLog, Word } from '../../model/log.ts';
import type { RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { type Bore, boreAbove, type WidestBore } from '../geometry/drilling-walls.ts';
import { mostStrings, nameOf, tooManyStrings } from '../geometry/strings.ts';
import { depthOf, type Ingredient, lengthOf, measured, ofFigure, ofLimit, worked } from '../ingredient.ts';
import { bottomOf, inDoubt, stretchOf } from '../intervals.ts';
import type { Figure } from '../record.ts';
import { staticLevelOf } from '../water/static-level.ts';
import { stretchText } from '../words.ts';
import { contactRateFigures } from './contact-rates.ts';
import { type DrillingLine, rateBreakFigures } from './drilling-breaks.ts';
import type { Family } from './family.ts';

/**
 * `drilling.N.penetration-rate`, `.rate-break`, `.rate-break-contact`, `.uphole-velocity`, `.uphole-velocity-sea-level`,
 * `.water-column`, `.spare-pressure`, N counting the lines under `drilling` through the file; then what they say of
 * the contacts, `strata.N.rate-change` and `.rate-change-break`.
 */
export const drillingFigures: Family = (context) => {
  const lines = linesOf(context.log);
  const rates = lines.map((line) => penetrationFigure(line, context.log.units));
  const widestAbove = context.log.strings.length > mostStrings ? null : boreAbove(context.log, context.hole);
  const level = staticLevelOf(context.log);
  const breaksAt = rateBreakFigures(context);
  const figures = lines.flatMap((line, index) => {
    const [above, rateAbove, rate] = [lines[index - 1], rates[index - 1], rates[index]];
    const breaks = above && rateAbove && rate ? breaksAt({ line: above, rate: rateAbove }, { line, rate }) : [];
    const air = usesAir(line)
      ? [...upholeFigures(line, context, widestAbove), ...liftFigures(line, level, context)]
      : [];
    return [...(rate ? [rate] : []), ...breaks, ...air];
  });
  const drilled = lines.flatMap((line, index) => {
    const rate = rates[index];
    return rate ? [{ line, rate }] : [];
  });
  return [...figures, ...contactRateFigures(drilled, context)];
};

const linesOf = (log: WellLog): DrillingLine[] =>
  log.drilling
    .flatMap((drilling) => drilling.intervals.map((interval) => ({ drilling, interval })))
    .map((line, index) => ({ ...line, number: index + 1 }));

function penetrationFigure({ number, interval }: DrillingLine, units: FileUnits): Figure {
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
function usesAir({ drilling, interval: { flush } }: DrillingLine): boolean {
  if (flush.length > 0) return flush.some(isAir);
  if (drilling.flush.length > 0) return drilling.flush.some(isAir);
  return drilling.airRate !== null;
}

/** Null where the log has too many strings to look through. */
type WidestAbove = ReturnType<typeof boreAbove> | null;

function upholeFigures(line: DrillingLine, context: RecordContext, widestAbove: WidestAbove): Figure[] {
  const { number, drilling, interval } = line;
  const { units } = context.log;
  const bit = stretchOf(interval.interval);
  const bore = widestAbove
    ? boreIngredient(bit ? widestAbove(bit, ownBore(drilling, interval)) : null, units)
    : worked('widest bore', null, 'diameter', units, { waitsFor: [tooManyStrings] });
  const air = measured('air rate', drilling.airRate, 'm3/s', drilling.line, 'the air rate of the compressor');
  const pipe = measured('drill pipe', drilling.pipe, 'm', drilling.line, 'the outside diameter of the drill pipe');
  const common = { shown: 'velocity', at: interval } as const;
  return [
    figureOf(
      {
        ...common,
        id: `drilling.${number}.uphole-velocity`,
        title: 'uphole velocity at the slowest place',
        formula: ofUphole,
        ingredients: [air, bore, pipe],
        compute: upholeVelocity,
      },
      units,
    ),
    figureOf(
      {
        ...common,
        id: `drilling.${number}.uphole-velocity-sea-level`,
        title: 'uphole velocity at the slowest place, of a worn compressor, as at sea level',
        formula: ofUpholeAtSeaLevel,
        ingredients: [air, bore, pipe, ...thinnedBy(context)],
        compute: seaLevelVelocity,
      },
      units,
    ),
  ];
}

const ofUpholeAtSeaLevel: Formula = {
  ...ofUphole,
  text: `${ofUphole.text}; ${ofDelivered.text}; ${ofAtmosphere.text}`,
  source: `${ofUphole.source}; ${ofDelivered.source}; ${ofAtmosphere.source}`,
  caution: ofAtmosphere.caution,
};

/** What makes the air less than rated: wear, by the pack, and the height above sea level. */
function thinnedBy({ log, limits }: RecordContext): Ingredient[] {
  const { ground } = log;
  return [
    ofLimit('share lost to wear', limits['air-rating-loss'], 0),
    measured(
      'height above sea level',
      ground?.elevation ?? null,
      'm',
      ground?.line ?? 0,
      'the elevation of the ground',
    ),
  ];
}

function seaLevelVelocity(rated: number, bore: number, pipe: number, lost: number, height: number): Outcome {
  const air = standardAtmosphere(height);
  const flow = air.ok ? deliveredAir(rated, lost, air.value.densityRatio) : air;
  return flow.ok ? upholeVelocity(flow.value, bore, pipe) : flow;
}

/** Water above the bit, and the pressure that it leaves the air, where the bit is below the level or a pressure is written. */
function liftFigures({ number, drilling, interval }: DrillingLine, level: WaterLevel | null, { log }: RecordContext) {
  const written = interval.pressure ?? drilling.pressure;
  const bit = bottomOf(interval.interval);
  const dry = bit !== null && level?.level?.value != null && bit <= level.level.value;
  if (dry || (level === null && written === null)) return [];
  const column = figureOf(
    {
      id: `drilling.${number}.water-column`,
      title: 'water above the bit, standing at the static level',
      shown: 'length',
      formula: ofColumn,
      ingredients: [
        depthOf('bit', interval.interval.bottom, interval.line, 'the bottom of the interval drilled'),
        depthOf('static level', level?.level ?? null, level?.line ?? interval.line, 'the static level'),
      ],
      compute: waterColumn,
      digits: 'sum',
      at: interval,
    },
    log.units,
  );
  const spare = figureOf(
    {
      id: `drilling.${number}.spare-pressure`,
      title: 'pressure of the air, less the water above the bit',
      shown: 'pressure',
      formula: ofLift,
      ingredients: [
        measured('pressure of the air', written, 'Pa', drilling.line, 'the pressure of the air'),
        ofFigure('water above the bit', column),
      ],
      compute: sparePressure,
      at: interval,
    },
    log.units,
  );
  return [column, spare];
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
