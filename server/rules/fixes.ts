import type { Columns, Span } from '../../grammar/span.ts';
import type { Depth, Interval, Measure } from '../model/log.ts';
import { figureIn } from './messages.ts';
import type { Edit, Fix } from './rule.ts';

export const fix = (
  title: string,
  edits: readonly Edit[],
  options: Partial<Pick<Fix, 'preferred' | 'safe'>> = {},
): Fix => ({
  title,
  edits,
  preferred: false,
  safe: false,
  ...options,
});

/** A fix that writes `text` over one place. */
export const overwrite = (span: Span, text: string, options: Partial<Pick<Fix, 'preferred' | 'safe'>> = {}): Fix =>
  fix(`Write "${text}"`, [{ span, text }], options);

/** A line put in after `line`; it is indented by two blanks. */
export const lineAfter = (line: number, lineText: string, added: string): Edit => ({
  span: { line, start: lineText.length, end: lineText.length },
  text: `\n  ${added}`,
});

/** The depth `metres`, written in the unit that stands at `place`, so that nothing else on the line changes meaning. */
export function depthAs(place: Depth | Measure, metres: number): string {
  const sign = metres < 0 ? '+' : '';
  const unit = place.unitWritten ? ` ${place.unit}` : '';
  return `${sign}${figureIn(Math.abs(metres), place.unit)}${unit}`;
}

/** A fix that sets the depth at `place` to another depth of the log; none where `place` does not stand on `line`. */
export function moveDepth(
  title: string,
  line: number,
  place: Depth | null,
  to: Depth | null,
  preferred = false,
): Fix[] {
  if (!place || place.span.line !== line || to?.value === null || to?.value === undefined) return [];
  const edits = [{ span: place.span, text: depthAs(place, to.value) }];
  return [fix(title, edits, { preferred })];
}

/** A fix that writes the top and the bottom of an interval the other way round. */
export function exchangeEnds({ top, bottom, span }: Interval, text: string): Fix[] {
  if (!top || !bottom || top.span.line !== span.line || bottom.span.line !== span.line) return [];
  const written = ({ start, end }: Columns) => text.slice(start, end);
  const edits = [
    { span: top.span, text: written(bottom.span) },
    { span: bottom.span, text: written(top.span) },
  ];
  return [fix('Exchange the two depths', edits, { preferred: true })];
}
