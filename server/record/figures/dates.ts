import { daysBetween, about as ofDays } from '../../calculations/dates/days.ts';
import { known } from '../../calculations/formula.ts';
import type { Moment } from '../../model/log.ts';
import { figureOf } from '../figure.ts';
import { decimals } from '../format-number.ts';
import type { Ingredient } from '../ingredient.ts';
import type { Family } from './family.ts';

const secondsADay = 86_400;

/** `work.days`, from the day on which drilling began to the one on which the well was finished. */
export const dateFigures: Family = ({ log: { began, finished, units } }) => {
  if (!began?.date || !finished?.date || !began.valid || !finished.valid) return [];
  const [from, to] = [began.date, finished.date];
  return [
    figureOf(
      {
        id: 'work.days',
        title: 'days from the beginning of the work to its end',
        shown: 'days',
        formula: ofDays,
        ingredients: [dateIngredient('began', began, from), dateIngredient('finished', finished, to)],
        compute: () => {
          const days = daysBetween(from, to);
          return days.ok ? known(days.value * secondsADay) : days;
        },
        digits: decimals(0),
        at: { line: finished.span.line, span: finished.span },
      },
      units,
    ),
  ];
};

/** A date, in seconds since 1970. */
function dateIngredient(name: string, { approximate, doubtful, span }: Moment, date: string): Ingredient {
  const value = Date.parse(`${date}T00:00Z`) / 1000;
  return {
    value,
    inputs: [{ name, value, unit: 's', text: date, line: span.line }],
    waitsFor: [],
    doubtful: approximate || doubtful,
    significant: null,
    decimals: null,
    unit: null,
  };
}
