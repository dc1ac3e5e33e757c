import { nearestDistance, about as ofBreak, rateBreak } from '../../calculations/air/rate-break.ts';
import type { RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { firstStarting, type Layer } from '../geometry/layers.ts';
import { type Ingredient, ofFigure, worked } from '../ingredient.ts';
import { stretchOf } from '../intervals.ts';
import type { Figure } from '../record.ts';
import { type Contact, contactsOf, type Drilled, isComparable, touching } from './drilling-breaks.ts';

const ofChange = {
  ...ofBreak,
  name: 'change of the penetration rate at a contact',
  text: 'k = larger / smaller of the rates of the last interval wholly above the contact and the first wholly below it',
};

const ofDistance = {
  ...ofBreak,
  name: 'contact and break',
  text: 'the depth of the contact less that of the nearest break, m',
};

/** A line that was timed, and where it stands. */
type Rod = Layer<Drilled>;

/** A depth where the rate breaks by as much as the pack asks for. */
type Break = Layer<{ readonly line: number; readonly doubtful: boolean }>;

/**
 * `strata.N.rate-change` and `.rate-change-break` of the contact at the base of the N-th layer, where timed intervals
 * of one bit and one flush stand on both sides of it; one that the contact lies in may stand between them.
 */
export function contactRateFigures(drilled: readonly Drilled[], context: RecordContext): Figure[] {
  const rods = drilled.flatMap(rodOf).sort((a, b) => a.top - b.top);
  if (rods.length < 2) return [];
  const breaks = breaksOf(rods, context);
  return contactsOf(context).flatMap((contact) => {
    const sides = sidesOf(contact.top, rods);
    if (!sides) return [];
    const change = changeFigure(contact, sides, context);
    return breaks.length === 0 ? [change] : [change, distanceFigure(contact, breaks, context)];
  });
}

function rodOf(of: Drilled): Rod[] {
  const stretch = stretchOf(of.line.interval.interval);
  return stretch && of.rate.value !== null && of.rate.value > 0 ? [{ ...stretch, of }] : [];
}

const areOneRun = (rods: readonly (Rod | undefined)[]): boolean =>
  rods.every((rod, index) => {
    const above = rods[index - 1];
    return rod !== undefined && (index === 0 || (above !== undefined && isComparable(above.of.line, rod.of.line)));
  });

interface Sides {
  readonly above: Drilled;
  readonly below: Drilled;
}

function sidesOf(depth: number, rods: readonly Rod[]): Sides | null {
  const next = firstStarting(rods, depth - touching);
  const isWithin = (rods[next - 1]?.bottom ?? 0) > depth + touching;
  const run = rods.slice(Math.max(0, isWithin ? next - 2 : next - 1), next + 1);
  const [above, below] = [run[0], run.at(-1)];
  const isWhole = run.length === (isWithin ? 3 : 2);
  return isWhole && above && below && areOneRun(run) ? { above: above.of, below: below.of } : null;
}

function breaksOf(rods: readonly Rod[], { limits }: RecordContext): Break[] {
  const least = limits['rate-break-ratio-least']?.value ?? Number.POSITIVE_INFINITY;
  return rods.flatMap((rod, index): Break[] => {
    const above = rods[index - 1];
    if (!above || !areOneRun([above, rod])) return [];
    const found = rateBreak(above.of.rate.value ?? 0, rod.of.rate.value ?? 0);
    if (!found.ok || found.value < least) return [];
    const doubtful = above.of.rate.doubtful || rod.of.rate.doubtful;
    return [{ top: rod.top, bottom: rod.top, of: { line: rod.of.line.interval.line, doubtful } }];
  });
}

const contactIngredient = ({ top, of }: Layer<Contact>, { log }: RecordContext): Ingredient =>
  worked('contact', top, 'length', log.units, of);

function changeFigure(contact: Layer<Contact>, { above, below }: Sides, context: RecordContext): Figure {
  const faster = (below.rate.value ?? 0) > (above.rate.value ?? 0);
  return figureOf(
    {
      id: `strata.${contact.of.number}.rate-change`,
      title: `how many times ${faster ? 'faster' : 'slower'} drilling went below the base of layer ${contact.of.number}`,
      shown: 'ratio',
      formula: ofChange,
      ingredients: [
        ofFigure('rate above', above.rate),
        ofFigure('rate below', below.rate),
        contactIngredient(contact, context),
      ],
      compute: (rateAbove, rateBelow) => rateBreak(rateAbove, rateBelow),
      at: contact.of,
    },
    context.log.units,
  );
}

function distanceFigure(contact: Layer<Contact>, breaks: readonly Break[], context: RecordContext): Figure {
  const next = firstStarting(breaks, contact.top);
  const near = breaks.slice(Math.max(0, next - 1), next + 1);
  return figureOf(
    {
      id: `strata.${contact.of.number}.rate-change-break`,
      title: `from the base of layer ${contact.of.number} to the nearest break of the rate`,
      shown: 'length',
      formula: ofDistance,
      ingredients: [
        contactIngredient(contact, context),
        ...near.map(({ top, of }): Ingredient => worked('break', top, 'length', context.log.units, of)),
      ],
      compute: (at, ...others) => nearestDistance(at, others),
      at: contact.of,
    },
    context.log.units,
  );
}
