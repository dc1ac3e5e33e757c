import type { DepthScale } from './depth-scale.ts';
import type { Sheet } from './sheet.ts';
import { exaggeration, exaggerationWords, type WellFrame } from './well/frame.ts';
import { mostDrawn } from './well/geometry.ts';
import { metresText } from './words.ts';

export interface FootNote {
  readonly line: number | null;
  readonly text: string;
}

function scaleWords(denominator: number, unit: string): string {
  const ratio = `1:${Number(denominator.toPrecision(6))}`;
  return unit === 'ft' && denominator % 12 === 0 ? `${ratio} (1 in to ${denominator / 12} ft)` : ratio;
}

function scaleNote(scale: DepthScale, frame: WellFrame | null, unit: string): string {
  const depths = `Depths ${scaleWords(scale.denominator, unit)} when printed at full size, from the ground surface.`;
  if (frame === null) return depths;
  const widths = exaggeration(frame) > 1 ? 'is exaggerated' : 'is another';
  return `${depths} The horizontal scale of the well ${widths}: ${exaggerationWords(frame)} than depths.`;
}

const isBeyond = (value: number | null | undefined, { window }: Sheet): value is number =>
  value != null && (value < window.top || value > window.bottom || Number.isNaN(value));

interface Reach {
  readonly line: number;
  readonly what: string;
  readonly ends: readonly (number | null | undefined)[];
}

const reachesOf = ({ log }: Sheet): Reach[] => [
  ...log.hole.map(({ line, interval }) => ({
    line,
    what: 'Hole',
    ends: [interval.top?.value, interval.bottom?.value],
  })),
  ...log.strata.map(({ line, interval }) => ({
    line,
    what: 'Layer',
    ends: [interval.top?.value, interval.bottom?.value],
  })),
  ...log.strings.flatMap(({ line, interval, fills, screens }) => [
    { line, what: 'String', ends: [interval.top?.value, interval.bottom?.value] },
    ...fills.map((fill) => ({
      line: fill.line,
      what: 'Fill',
      ends: [fill.interval?.top?.value, fill.interval?.bottom?.value],
    })),
    ...screens.map((screen) => ({
      line: screen.line,
      what: 'Screen',
      ends: [screen.interval.top?.value, screen.interval.bottom?.value],
    })),
  ]),
  ...log.water.found.map(({ line, depth, interval }) => ({
    line,
    what: 'Water found',
    ends: [depth?.value, interval?.top?.value, interval?.bottom?.value],
  })),
  ...log.water.levels.map(({ line, level }) => ({ line, what: 'Water level', ends: [level?.value] })),
];

/* Of many, the first are enough to send someone to the notes. */
const mostNotes = 8;

function cutNotes(sheet: Sheet): FootNote[] {
  const cut = reachesOf(sheet).flatMap(({ line, what, ends }) => {
    const far = ends.find((end) => isBeyond(end, sheet));
    return far === undefined
      ? []
      : [
          {
            line,
            text: `${what} on line ${line + 1} is cut short here: it reaches ${metresText(far ?? Number.NaN, sheet.unit)}.`,
          },
        ];
  });
  const rest = cut.length - mostNotes;
  return rest > 0 ? [...cut.slice(0, mostNotes), { line: null, text: `${rest} more are cut short.` }] : cut;
}

function wideNote({ well, unit }: Sheet): FootNote[] {
  if (well.unsound === null) return [];
  return [
    {
      line: null,
      text: `A diameter of ${metresText(well.unsound, unit)} is none that a well has: that width is left open.`,
    },
  ];
}

function manyNote({ log }: Sheet): FootNote[] {
  const isMany = log.strings.length > mostDrawn || log.hole.length + log.existing.length > mostDrawn;
  return isMany ? [{ line: null, text: `Only the first ${mostDrawn} strings and stretches of hole are drawn.` }] : [];
}

function emptyNote({ log }: Sheet): FootNote[] {
  const isEmpty = log.strata.length + log.hole.length + log.strings.length + log.water.found.length === 0;
  return isEmpty ? [{ line: null, text: 'Nothing is logged against depth yet.' }] : [];
}

/** What a reader must know of the drawing: its scales, and what it could not show in full. */
export const footNotes = (sheet: Sheet, scale: DepthScale, frame: WellFrame | null): FootNote[] => [
  { line: null, text: scaleNote(scale, frame, sheet.unit) },
  ...emptyNote(sheet),
  ...wideNote(sheet),
  ...manyNote(sheet),
  ...cutNotes(sheet),
];
