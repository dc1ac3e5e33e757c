import { known, type Outcome } from '../../calculations/formula.ts';
import {
  entranceVelocity,
  about as ofEntrance,
  openAreaOf,
  screenLength,
} from '../../calculations/screen/entrance-velocity.ts';
import type { FileUnits, Measure, PipeString, Screen, WellLog } from '../../model/log.ts';
import type { LimitInForce } from '../../packs/limits.ts';
import { figureOf } from '../figure.ts';
import { nameOf, outsideOfScreen } from '../geometry/strings.ts';
import { type Ingredient, lengthOf, measured, ofLimit, worked } from '../ingredient.ts';
import { inDoubt } from '../intervals.ts';
import type { Figure } from '../record.ts';
import type { Family } from './family.ts';

/** `casing.N.screen.M.entrance-velocity` and `.length-needed`, at the greatest rate that the well was tested or fitted for. */
export const screenFigures: Family = ({ log, limits }) => {
  const rate = greatestRate(log);
  const most = limits['entrance-velocity-most'];
  return log.strings.flatMap((string) =>
    string.screens.flatMap((screen) => figuresOf({ screen, string, rate, most }, log)),
  );
};

interface Rate {
  readonly rate: Measure | null;
  readonly line: number | null;
}

/** The greatest rate of any test or pump. */
function greatestRate(log: WellLog): Rate {
  const rates: Rate[] = [
    ...log.tests.flatMap(({ rate, line, phases }) => [
      { rate, line },
      ...phases.map((each) => ({ rate: each.rate, line })),
    ]),
    ...log.pumps.map(({ rate, line }) => ({ rate, line })),
  ];
  return rates.reduce((most, each) => ((each.rate?.value ?? 0) > (most.rate?.value ?? 0) ? each : most), {
    rate: null,
    line: null,
  });
}

interface Screened {
  readonly screen: Screen;
  readonly string: PipeString;
  readonly rate: Rate;
  readonly most: LimitInForce | undefined;
}

function figuresOf({ screen, string, rate: { rate, line }, most }: Screened, { units }: WellLog): Figure[] {
  const name = `screen ${screen.number} of ${nameOf(string)}`;
  const isShare = screen.openArea?.unit === '%';
  const pumped = measured('rate', rate, 'm3/s', line ?? screen.line, 'the rate at which the well is pumped');
  const open = [
    measured('open area', screen.openArea, isShare ? '1' : 'm2/m', screen.line, `the open area of ${name}`),
    ...(isShare ? [outsideIngredient(screen, string, name, units)] : []),
  ];
  const areaOf = (area: number, diameter: number): Outcome => (isShare ? openAreaOf(diameter, area) : known(area));
  const common = { formula: ofEntrance, at: screen } as const;
  const id = `casing.${string.number}.screen.${screen.number}`;
  const velocity = figureOf(
    {
      ...common,
      id: `${id}.entrance-velocity`,
      title: `entrance velocity, ${name}`,
      shown: 'entrance-velocity',
      ingredients: [pumped, lengthOf('length', screen.interval, screen.line, name), ...open],
      compute: (flow, length, area, diameter = 0) =>
        andThen(areaOf(area, diameter), (a) => entranceVelocity(flow, a, length)),
    },
    units,
  );
  if (!most) return [velocity];
  const needed = figureOf(
    {
      ...common,
      id: `${id}.length-needed`,
      title: `length of such a screen for the limit of the entrance velocity, ${name}`,
      shown: 'length',
      ingredients: [pumped, ofLimit('entrance velocity, at most', most, most.value), ...open],
      compute: (flow, limit, area, diameter = 0) =>
        andThen(areaOf(area, diameter), (a) => screenLength(flow, a, limit)),
    },
    units,
  );
  return [velocity, needed];
}

const andThen = (outcome: Outcome, next: (value: number) => Outcome): Outcome =>
  outcome.ok ? next(outcome.value) : outcome;

const outsideIngredient = (screen: Screen, string: PipeString, name: string, units: FileUnits): Ingredient =>
  worked('outside diameter', outsideOfScreen(screen, string), 'diameter', units, {
    waitsFor: [`the outside diameter of ${name}`],
    line: screen.line,
    doubtful: inDoubt(screen.size.outside) || inDoubt(string.size.outside),
  });
