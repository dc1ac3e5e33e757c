import type { Outcome } from '../../calculations/formula.ts';
import { entranceVelocity, about as ofEntrance, openAreaOf } from '../../calculations/screen/entrance-velocity.ts';
import type { Measure, PipeString, Screen, WellLog } from '../../model/log.ts';
import { figureOf } from '../figure.ts';
import { nameOf, outsideOfScreen } from '../geometry/strings.ts';
import { type Ingredient, lengthOf, measured, worked } from '../ingredient.ts';
import type { Figure } from '../record.ts';
import type { Family } from './family.ts';

/** `casing.N.screen.M.entrance-velocity`, at the greatest rate that the well was tested or fitted for. */
export const screenFigures: Family = ({ log }) => {
  const rate = greatestRate(log);
  return log.strings.flatMap((string) => string.screens.map((screen) => velocityFigure(screen, string, rate, log)));
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

function velocityFigure(screen: Screen, string: PipeString, { rate, line }: Rate, { units }: WellLog): Figure {
  const name = `screen ${screen.number} of ${nameOf(string)}`;
  const outside = outsideOfScreen(screen, string);
  const isShare = screen.openArea?.unit === '%';
  const wide: Ingredient[] = isShare
    ? [worked('outside diameter', outside, 'diameter', units, { waitsFor: [`the outside diameter of ${name}`] })]
    : [];
  return figureOf(
    {
      id: `casing.${string.number}.screen.${screen.number}.entrance-velocity`,
      title: `entrance velocity, ${name}`,
      shown: 'entrance-velocity',
      formula: ofEntrance,
      ingredients: [
        measured('rate', rate, 'm3/s', line ?? screen.line, 'the rate at which the well is pumped'),
        measured('open area', screen.openArea, isShare ? '1' : 'm2/m', screen.line, `the open area of ${name}`),
        lengthOf('length', screen.interval, screen.line, name),
        ...wide,
      ],
      compute: (flow, open, length, diameter) => velocity(flow, isShare ? openAreaOf(diameter, open) : open, length),
      at: screen,
    },
    units,
  );
}

function velocity(flow: number, open: Outcome | number, length: number): Outcome {
  if (typeof open === 'number') return entranceVelocity(flow, open, length);
  return open.ok ? entranceVelocity(flow, open.value, length) : open;
}
