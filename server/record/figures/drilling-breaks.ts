import { nearestDistance, about as ofBreak, rateBreak } from '../../calculations/air/rate-break.ts';
import type { DrilledInterval, Drilling, Span } from '../../model/log.ts';
import type { RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { firstStarting, type Layer } from '../geometry/layers.ts';
import { depthOf, type Ingredient, ofFigure, worked } from '../ingredient.ts';
import { bottomOf, intervalInDoubt, topOf } from '../intervals.ts';
import type { Figure } from '../record.ts';

/** A line under `drilling`, with its head; `number` counts them through the file, from 1. */
export interface DrillingLine {
  readonly drilling: Drilling;
  readonly interval: DrilledInterval;
  readonly number: number;
}

export interface Drilled {
  readonly line: DrillingLine;
  /** Its penetration rate. */
  readonly rate: Figure;
}

/** Tells of a line and the one above it `.rate-break`, and of a break as large as the pack’s `.rate-break-contact`. */
export function rateBreakFigures(context: RecordContext): (above: Drilled, below: Drilled) => Figure[] {
  const contacts = contactsOf(context);
  const least = context.limits['rate-break-ratio-least']?.value ?? Number.POSITIVE_INFINITY;
  return (above, below) => {
    if (above.rate.value === null || below.rate.value === null || !isComparable(above.line, below.line)) return [];
    const found = breakFigure(above.rate, below, context);
    if ((found.value ?? 0) < least || contacts.length === 0) return [found];
    return [found, contactFigure(below, contacts, context)];
  };
}

/** Depths closer than this, in metres, are one depth. */
export const touching = 0.005;

/** Lines that meet, drilled with one bit and one flush: else the rate changes for a reason of its own. */
export function isComparable(above: DrillingLine, below: DrillingLine): boolean {
  const [foot, top] = [bottomOf(above.interval.interval), topOf(below.interval.interval)];
  if (foot === null || top === null || Math.abs(foot - top) > touching) return false;
  return bitOf(above) === bitOf(below) && flushOf(above) === flushOf(below);
}

const bitOf = ({ drilling, interval }: DrillingLine): number | null => (interval.bit ?? drilling.bit)?.value ?? null;

const flushOf = ({ drilling, interval }: DrillingLine): string =>
  (interval.flush.length > 0 ? interval.flush : drilling.flush).map(({ id }) => id).join();

function breakFigure(rateAbove: Figure, { line, rate }: Drilled, { log }: RecordContext): Figure {
  const faster = (rate.value ?? 0) > (rateAbove.value ?? 0);
  return figureOf(
    {
      id: `drilling.${line.number}.rate-break`,
      title: `how many times ${faster ? 'faster' : 'slower'} than the interval above`,
      shown: 'ratio',
      formula: ofBreak,
      ingredients: [ofFigure('rate above', rateAbove), ofFigure('rate here', rate)],
      compute: rateBreak,
      at: line.interval,
    },
    log.units,
  );
}

/** The base of a layer; `number` is the place of the layer in the file, from 1. */
export interface Contact {
  readonly number: number;
  readonly line: number;
  readonly span: Span;
  readonly doubtful: boolean;
}

/** Where one stratum ends and the next begins, from the top down. */
export function contactsOf({ log }: RecordContext): Layer<Contact>[] {
  const depths = log.strata.flatMap(({ interval, line, span }, index): Layer<Contact>[] => {
    const depth = bottomOf(interval);
    const of = { number: index + 1, line, span, doubtful: intervalInDoubt(interval) };
    return depth === null ? [] : [{ top: depth, bottom: depth, of }];
  });
  return depths.sort((a, b) => a.top - b.top).slice(0, -1);
}

const ofContact = {
  ...ofBreak,
  name: 'break and contact',
  text: 'the depth of the break less that of the nearest contact, m',
};

function contactFigure({ line }: Drilled, contacts: readonly Layer<Contact>[], { log }: RecordContext): Figure {
  const { interval } = line;
  const depth = topOf(interval.interval) ?? 0;
  const next = firstStarting(contacts, depth);
  const near = contacts.slice(Math.max(0, next - 1), next + 1);
  return figureOf(
    {
      id: `drilling.${line.number}.rate-break-contact`,
      title: 'from the break of the rate to the nearest contact logged',
      shown: 'length',
      formula: ofContact,
      ingredients: [
        depthOf('break', interval.interval.top, interval.line, 'the depth of the break'),
        ...near.map((contact): Ingredient => worked('contact', contact.top, 'length', log.units, contact.of)),
      ],
      compute: (at, ...others) => nearestDistance(at, others),
      at: interval,
    },
    log.units,
  );
}
