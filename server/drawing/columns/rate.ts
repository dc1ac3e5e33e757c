import { tickStep, yOf } from '../depth-scale.ts';
import { metresIn } from '../lengths.ts';
import { filled, line, type Part, rect, type Shape, stroked } from '../shapes.ts';
import { textRow, textWidth, types } from '../text.ts';
import { intervalWithUnit, numberText } from '../words.ts';
import type { Column, ColumnPlace } from './column.ts';
import { type Drilled, drilledOf } from './drilled.ts';

const secondsAMinute = 60;
const inset = 1;
const ticksApart = 4.5;
const bar = { ...filled('quiet-ink', 0.3), stroke: 'ink', width: 0.18 } as const;
const gridLine = stroked('rule', 0.15);

/** Units of depth a minute. */
const rateIn = (rate: number, unit: string): number => (rate * secondsAMinute) / metresIn(unit);

/** The digits after the point that a step needs. */
const digitsOf = (step: number): number => Math.max(0, -Math.floor(Math.log10(step) + 1e-9));

interface RateAxis {
  readonly end: number;
  readonly step: number;
}

function axisFor(rates: readonly number[], width: number): RateAxis {
  const most = rates.reduce((greatest, rate) => Math.max(greatest, rate), 0) || 1;
  const step = tickStep(width / most, ticksApart);
  return { step, end: Math.ceil(most / step - 1e-9) * step };
}

const known = (drilled: Drilled): drilled is Drilled & { readonly rate: number } => drilled.rate !== null;

/** The marks that are named: the ends and the middle, as far as their numbers find room. */
function namedMarks(count: number, room: number, widest: number): ReadonlySet<number> {
  const apart = widest + 1.2;
  if (2 * apart > room) return new Set([count]);
  return new Set(3 * apart > room || count % 2 > 0 ? [0, count] : [0, count / 2, count]);
}

function axisShapes({ end, step }: RateAxis, { box, scale }: ColumnPlace, xOf: (rate: number) => number): Shape[] {
  const count = Math.round(end / step);
  const textAt = (n: number): string => (n * step).toFixed(digitsOf(step));
  const named = namedMarks(count, box.width - 2 * inset, textWidth(textAt(count), types.small));
  return Array.from({ length: count + 1 }, (_, n) => n).flatMap((n) => {
    const x = xOf(n * step);
    const mark = line(
      [
        [x, scale.top - 0.4],
        [x, box.y + box.height],
      ],
      gridLine,
    );
    const anchor = n === 0 ? 'start' : n === count ? 'end' : 'middle';
    return named.has(n) ? [mark, textRow(textAt(n), x, box.y + 0.3, types.small, anchor)] : [mark];
  });
}

/** How fast the hole went down, as bars against depth. */
export const rateColumn: Column = {
  id: 'rate',
  heading: () => 'Penetration',
  subheading: ({ unit }) => `${unit}/min`,
  width: 15.6,
  grows: false,
  rise: 0,
  isNeeded: (sheet) => drilledOf(sheet).some(known),
  labels: () => [],
  parts: (sheet, place): Part[] => {
    const { scale, box } = place;
    const { unit } = sheet;
    const drilled = drilledOf(sheet).filter(known);
    const room = box.width - 2 * inset;
    const all = drilledOf({ ...sheet, window: sheet.whole }).filter(known);
    const axis = axisFor(
      all.map(({ rate }) => rateIn(rate, unit)),
      room,
    );
    const xOf = (rate: number): number => box.x + inset + (room * rate) / axis.end;
    const bars = drilled.map(({ top, bottom, rate, interval }) => {
      const [y, speed] = [yOf(scale, top), rateIn(rate, unit)];
      return {
        name: 'rate',
        line: interval.line,
        title: `${intervalWithUnit(interval.interval, unit)} drilled at ${numberText(Number(speed.toPrecision(3)), 0)} ${unit}/min`,
        shapes: [rect(xOf(0), y, xOf(speed) - xOf(0), yOf(scale, bottom) - y, bar)],
      };
    });
    const title = `Penetration rate in ${unit}/min`;
    return [{ name: 'axis-rate', line: null, title, shapes: axisShapes(axis, place, xOf) }, ...bars];
  },
};
