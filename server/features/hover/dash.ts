import * as l10n from '@vscode/l10n';
import type { Columns } from '../../../grammar/span.ts';
import type { Line } from '../../../grammar/tree.ts';
import { lines } from '../markdown.ts';
import { touches } from '../position.ts';
import { intervalLines } from './depth.ts';
import type { HoverSource } from './source.ts';

const dashesOf = (line: Line): readonly Columns[] =>
  [line.depths, ...line.items.map(({ value }) => value)].flatMap((value) =>
    value?.kind === 'interval' ? [value.dash] : [],
  );

/** The dash of an interval, which tells how thick it is and, on a line that begins with it, where it begins. */
export const hoverDash: HoverSource = (place) => {
  const dash = dashesOf(place.line).find((each) => touches(each, place.at.column));
  if (dash === undefined) return null;
  const markdown = lines(intervalLines(dash.start, place));
  return {
    start: dash.start,
    end: dash.end,
    markdown: markdown === '' ? l10n.t('from one depth to the other') : markdown,
  };
};
