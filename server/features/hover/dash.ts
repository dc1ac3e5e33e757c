import * as l10n from '@vscode/l10n';
import type { Columns } from '../../../grammar/span.ts';
import type { Line } from '../../../grammar/tree.ts';
import { lines } from '../markdown.ts';
import { touches } from '../position.ts';
import { intervalLines } from './depth.ts';
import type { HoverSource } from './source.ts';

function dashAt({ depths, items }: Line, column: number): Columns | null {
  if (depths?.kind === 'interval' && touches(depths.dash, column)) return depths.dash;
  for (const { value } of items) if (value.kind === 'interval' && touches(value.dash, column)) return value.dash;
  return null;
}

/** The dash of an interval, which tells how thick it is and, on a line that begins with it, where it begins. */
export const hoverDash: HoverSource = (place) => {
  const dash = dashAt(place.line, place.at.column);
  if (dash === null) return null;
  const markdown = lines(intervalLines(dash.start, place));
  return {
    start: dash.start,
    end: dash.end,
    markdown: markdown === '' ? l10n.t('from one depth to the other') : markdown,
  };
};
