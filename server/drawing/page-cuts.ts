import { tickStep } from './depth-scale.ts';
import type { DepthWindow } from './depth-window.ts';
import { type Label, labelHeight } from './labels.ts';
import { metresIn } from './lengths.ts';

/** What one page shows: its depths, and the labels of each column that stand on it. */
export interface PageCut {
  readonly window: DepthWindow;
  readonly labels: readonly (readonly Label[])[];
}

/** The room on a page, in mm. */
export interface PageRoom {
  /** For depths, at the scale. */
  readonly depths: number;
  /** For words. */
  readonly words: number;
}

export interface Cutting {
  readonly window: DepthWindow;
  readonly unit: string;
  readonly mmPerMetre: number;
  readonly room: (page: number) => PageRoom;
  /** The labels of each column. */
  readonly columns: readonly (readonly Label[])[];
  /** Labels that a page begins with in each column: what goes on from the page before. */
  readonly continued: (depth: number) => readonly (readonly Label[])[];
}

const mostPages = 400;
/* A page that words alone fill shows no less than this part of the depths that it could. */
const leastShare = 0.1;
const wishedTickApart = 9;

const depthOf = ({ at }: Label): number => at ?? Number.POSITIVE_INFINITY;

/** How many of the labels stand in the height, one below the other. */
function fitting(labels: readonly Label[], height: number): number {
  let used = 0;
  const over = labels.findIndex((label) => {
    used += labelHeight(label);
    return used > height;
  });
  return over < 0 ? labels.length : over;
}

/** The depth at which a page ends: where its paper or its words end, at a round one if that costs little. */
function endOf(cutting: Cutting, from: number, room: PageRoom, columns: readonly (readonly Label[])[]): number {
  const { window, unit, mmPerMetre } = cutting;
  const reach = room.depths / mmPerMetre;
  const filled = columns.map((labels) => {
    const next = labels[fitting(labels, room.words)];
    return next === undefined ? Number.POSITIVE_INFINITY : Math.max(depthOf(next), from + leastShare * reach);
  });
  const end = Math.min(from + reach, ...filled);
  if (end >= window.bottom) return window.bottom;
  const step = tickStep(mmPerMetre * metresIn(unit), wishedTickApart) * metresIn(unit);
  const round = Math.floor(end / step + 1e-9) * step;
  return end === from + reach && round > from + 0.7 * reach ? round : end;
}

/** The pages of a log: each as deep as its paper is high at the scale, or as its words find room. */
export function pageCuts(cutting: Cutting): PageCut[] {
  const { window, columns, continued, room } = cutting;
  const pages: PageCut[] = [];
  let rest = columns.map((labels) => [...labels].sort((a, b) => depthOf(a) - depthOf(b) || 0));
  let from = window.top;
  do {
    const begun = pages.length === 0 ? columns.map(() => []) : continued(from);
    const here = room(pages.length);
    const waiting = rest.map((labels, n) => [...(begun[n] ?? []), ...labels]);
    const bottom = endOf(cutting, from, here, waiting);
    const isLast = bottom >= window.bottom;
    const counts = waiting.map((labels) => {
      const those = labels.filter((label) => isLast || depthOf(label) < bottom).length;
      return Math.min(those, fitting(labels, here.words));
    });
    const labels = waiting.map((each, n) =>
      each.slice(0, counts[n]).map((label) => ({ ...label, at: label.at === null ? null : Math.max(label.at, from) })),
    );
    pages.push({ window: { top: from, bottom }, labels });
    rest = waiting.map((each, n) => each.slice(Math.max(counts[n] ?? 0, begun[n]?.length ?? 0)));
    if (!isLast) from = bottom;
    else if (rest.every((each) => each.length === 0)) break;
  } while (pages.length < mostPages);
  return pages;
}
