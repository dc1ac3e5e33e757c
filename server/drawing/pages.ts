import type { Record as WellRecord } from '../record/record.ts';
import { headHeight, type Plan, padding, sheetParts } from './compose.ts';
import { bottomY, type DepthScale, depthScale, fittingScale, givenScale } from './depth-scale.ts';
import { labelsHeight } from './labels.ts';
import { tilesOf } from './legend.ts';
import { type DrawingOptions, papers } from './options.ts';
import { type PageCut, pageCuts } from './page-cuts.ts';
import { edge, headParts, type PaperPlace, pageLine, placeOn } from './paper.ts';
import { type Drawing, describeSheet, drawingTitle, neededHeight, type WellDrawing } from './scene.ts';
import { type Sheet, sheetOf } from './sheet.ts';
import { shrunk } from './shrunk.ts';
import { type Track, tracksOf } from './tracks.ts';

/** The scale asked for; else one at which the log fills a page, or its words find room on several. */
function scaleOf(whole: Sheet, tracks: readonly Track[], first: PaperPlace, wanted: number | null): DepthScale {
  if (wanted !== null) return givenScale(whole.window, 0, wanted);
  const needed = neededHeight(tracks);
  return needed <= first.body
    ? fittingScale(whole.window, 0, first.body - 2 * padding, whole.unit)
    : depthScale(whole.window, 0, needed, whole.unit);
}

const withLabels = (tracks: readonly Track[], { labels }: PageCut): Track[] =>
  tracks.map((track, n) => ({ ...track, labels: labels[n] ?? [] }));

interface Page {
  readonly sheet: Sheet;
  readonly whole: Sheet;
  readonly tracks: readonly Track[];
  readonly place: PaperPlace;
  readonly scale: DepthScale;
  readonly number: number;
  readonly count: number;
  readonly title: boolean;
}

function drawPage({ sheet, whole, tracks, place, scale, number, count, title }: Page): WellDrawing {
  const { top, width } = place;
  const body = top + headHeight;
  const words = body + tracks.reduce((most, track) => Math.max(most, labelsHeight(track.labels)), 0);
  const bottom = number < count ? body + place.body : Math.max(bottomY(scale) + padding, words);
  const plan: Plan = { sheet, whole, tracks, scale, left: edge, width: width - 2 * edge, top, bottom };
  const { parts, foot } = sheetParts(plan);
  const height = Math.max(place.height, foot + edge + 4);
  return {
    widthMm: width,
    heightMm: height,
    title: count === 1 ? drawingTitle(whole) : `${drawingTitle(whole)}, page ${number} of ${count}`,
    description: describeSheet(whole),
    scale,
    tiles: tilesOf(whole),
    parts: [...headParts(sheet, place, number === 1, title), ...parts, pageLine(sheet, place, height, number, count)],
  };
}

const placeWidth = ({ paper }: DrawingOptions, times = 1): number => papers[paper].width * times - 2 * edge;

/** The log on sheets of paper at a scale, each with the head, the axes and its place among the pages. */
export function drawPages(record: WellRecord, options: DrawingOptions): WellDrawing[] {
  const whole = sheetOf(record);
  const tracks = tracksOf(whole, options.columns, edge, placeWidth(options));
  const places = [placeOn(whole, tracks, options, true), placeOn(whole, tracks, options, false)] as const;
  const { mmPerMetre, denominator } = scaleOf(whole, tracks, places[0], options.scale);
  const placeFor = (page: number): PaperPlace => places[page === 0 ? 0 : 1];
  const cuts = pageCuts({
    window: whole.window,
    unit: whole.unit,
    mmPerMetre,
    room: (page) => ({ words: placeFor(page).body, depths: placeFor(page).body - 2 * padding }),
    columns: tracks.map(({ labels }) => labels),
    continued: (depth) => tracks.map(({ column, width }) => column.continued?.(whole, width, depth) ?? []),
  });
  return cuts.map((cut, n) => {
    const place = placeFor(n);
    const sheet = sheetOf(record, cut.window);
    const scale = { window: cut.window, top: place.top + headHeight + padding, mmPerMetre, denominator };
    const page = { sheet, whole, place, scale, number: n + 1, count: cuts.length, title: options.title };
    return drawPage({ ...page, tracks: withLabels(tracks, cut) });
  });
}

/* Sheets this many times larger are tried, to be made smaller to the paper. */
const growth = 1.15;
const mostSteps = 30;

/** The whole log on one sheet of paper; where its words find no room, everything is drawn smaller. */
export function drawOnePage(record: WellRecord, options: DrawingOptions): Drawing {
  const whole = sheetOf(record);
  for (let step = 0; ; step += 1) {
    const times = growth ** step;
    const tracks = tracksOf(whole, options.columns, edge, placeWidth(options, times));
    const place = placeOn(whole, tracks, options, true, times);
    if (neededHeight(tracks) > place.body && step < mostSteps) continue;
    const room = place.body - 2 * padding;
    const { denominator } = fittingScale(whole.window, 0, room / times, whole.unit);
    const scale = {
      window: whole.window,
      top: place.top + headHeight + padding,
      mmPerMetre: (1000 * times) / denominator,
      denominator,
    };
    const { title } = options;
    return shrunk(drawPage({ sheet: whole, whole, tracks, place, scale, number: 1, count: 1, title }), 1 / times);
  }
}
