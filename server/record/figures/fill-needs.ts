import { hoursBetween, about as ofHours } from '../../calculations/dates/hours.ts';
import { bagsNeeded, about as ofBags } from '../../calculations/grout/bags-needed.ts';
import { bentoniteExtraWater, about as ofExtraWater } from '../../calculations/grout/bentonite-extra-water.ts';
import { about as ofShare, placedShare } from '../../calculations/grout/placed-share.ts';
import { about as ofPackMass, packMass } from '../../calculations/screen/pack-mass.ts';
import type { DrilledInterval, Fill, Moment, PipeString } from '../../model/log.ts';
import type { PlacedFill, RecordContext } from '../context.ts';
import { figureOfFill } from '../fills/figure-of-fill.ts';
import { annulusIngredient, bagIngredients, bentoniteIngredient, netIngredient } from '../fills/fill-ingredients.ts';
import { goesInDry, isMixed } from '../fills/mix.ts';
import { decimals } from '../format-number.ts';
import { endOf } from '../geometry/moments.ts';
import { footOf } from '../geometry/strings.ts';
import { type Ingredient, measured, ofFigure } from '../ingredient.ts';
import { topOf } from '../intervals.ts';
import type { Figure } from '../record.ts';
import type { Family } from './family.ts';
import { bagsVolumeFigure } from './fill-mix.ts';
import { requiredVolumeFigure } from './fill-volumes.ts';

/** `casing.N.grout.M.placed-share`, `.bags-required`, `.bentonite-water`, `.set-time`; of a pack `.mass`. */
export const fillNeedFigures: Family = (context) => {
  const timed = timedDrilling(context);
  return context.fills.flatMap((placed) => figuresOf(placed, timed, context));
};

function figuresOf(placed: PlacedFill, timed: readonly TimedDrilling[], context: RecordContext): Figure[] {
  const { fill, string } = placed;
  const inAnnulus = !string.driven;
  if (fill.kind === 'pack') return inAnnulus ? [packFigure(placed, context)] : [];
  const bagged = fill.bags !== null && (isMixed(fill) || goesInDry(fill));
  return [
    ...(inAnnulus ? [shareFigure(placed, context)] : []),
    ...(inAnnulus && bagged ? [bagsFigure(placed, context)] : []),
    ...(fill.bentonite && fill.fillClass === 'cement' ? [waterFigure(placed, context)] : []),
    ...setTimeFigures(placed, timed, context),
  ];
}

const shareFigure = (placed: PlacedFill, context: RecordContext): Figure =>
  figureOfFill(placed, context, 'placed-share', 'volume placed against the bare annulus', {
    shown: 'share',
    formula: ofShare,
    ingredients: [netIngredient(placed, context), annulusIngredient(placed, context)],
    compute: placedShare,
  });

const bagsFigure = (placed: PlacedFill, context: RecordContext): Figure =>
  figureOfFill(placed, context, 'bags-required', 'bags for the volume required, of the same mix', {
    shown: 'ratio',
    formula: { ...ofBags, text: `${ofBags.text}; Vb the volume that the bags made, over their number` },
    ingredients: [
      ofFigure('volume required', requiredVolumeFigure(placed, context)),
      ofFigure('volume that the bags made', bagsVolumeFigure(placed, context)),
      measured('bags', placed.fill.bags?.count ?? null, '1', placed.fill.line, 'the number of bags'),
    ],
    compute: (required, made, bags) => bagsNeeded(required, made / bags),
    digits: decimals(0),
  });

function waterFigure(placed: PlacedFill, context: RecordContext): Figure {
  const { fill } = placed;
  return figureOfFill(placed, context, 'bentonite-water', 'water that the bentonite may add', {
    shown: 'volume',
    formula: ofExtraWater,
    ingredients: [bentoniteIngredient(fill), ...bagIngredients(fill)],
    compute: (share, ...parts) =>
      bentoniteExtraWater(
        parts.reduce((mass, part) => mass * part, 1),
        share,
      ),
  });
}

const packFigure = (placed: PlacedFill, context: RecordContext): Figure =>
  figureOfFill(placed, context, 'mass', 'filter pack that the annulus takes', {
    shown: 'mass',
    formula: ofPackMass,
    ingredients: [annulusIngredient(placed, context)],
    compute: (volume) => packMass(volume),
  });

interface TimedDrilling {
  readonly interval: DrilledInterval;
  readonly top: number;
  readonly began: Clock;
}

/** A moment with both a date and a time. */
interface Clock {
  readonly text: string;
  readonly moment: Moment;
}

function clockOf(moment: Moment | null): Clock | null {
  if (!moment?.date || !moment.time || !moment.valid) return null;
  return { text: `${moment.date} ${moment.time.slice(0, 5)}`, moment };
}

/** Drilling whose beginning has a date and a time, the earliest first. */
const timedDrilling = ({ log }: RecordContext): TimedDrilling[] =>
  log.drilling
    .flatMap(({ intervals }) => intervals)
    .flatMap((interval): TimedDrilling[] => {
      const [top, began] = [topOf(interval.interval), clockOf(interval.when?.from ?? null)];
      return top === null || began === null ? [] : [{ interval, top, began }];
    })
    .sort((a, b) => (a.began.text < b.began.text ? -1 : 1));

const setting = new Set(['cement', 'concrete']);
const seated = 0.005;

const sets = ({ fillClass }: Fill): boolean => setting.has(fillClass ?? '');

/** The first drilling at or below the foot of the string after something was placed around it. */
const firstBelow = (timed: readonly TimedDrilling[], string: PipeString, placed: Clock): TimedDrilling | undefined => {
  const foot = footOf(string);
  return foot === null ? undefined : timed.find(({ top, began }) => top >= foot - seated && began.text >= placed.text);
};

function setTimeFigures(placed: PlacedFill, timed: readonly TimedDrilling[], context: RecordContext): Figure[] {
  const end = sets(placed.fill) ? clockOf(endOf(placed.fill.placed)) : null;
  const next = end && firstBelow(timed, placed.string, end);
  if (!end || !next) return [];
  const figure = figureOfFill(placed, context, 'set-time', 'from placing the cement to drilling on below', {
    shown: 'time',
    formula: ofHours,
    ingredients: [momentIngredient('placed', end), momentIngredient('drilling went on', next.began)],
    compute: () => {
      const hours = hoursBetween(end.text, next.began.text);
      return hours.ok ? hours.value * secondsAnHour : hours;
    },
    caution: 'Cement in the cold sets later: follow the pack, the maker and the local code.',
  });
  return [figure];
}

const secondsAnHour = 3600;

const momentIngredient = (name: string, { text, moment }: Clock): Ingredient => ({
  value: Date.parse(`${text.replace(' ', 'T')}Z`) / 1000,
  inputs: [{ name, value: Date.parse(`${text.replace(' ', 'T')}Z`) / 1000, unit: 's', text, line: moment.span.line }],
  waitsFor: [],
  doubtful: moment.approximate || moment.doubtful,
  significant: null,
  decimals: null,
  unit: null,
});
