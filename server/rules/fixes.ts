import * as l10n from '@vscode/l10n';
import type { Columns, Span } from '../../grammar/span.ts';
import type { Depth, Interval, Measure } from '../model/log.ts';
import { figureIn, shortened } from './messages.ts';
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
  fix(l10n.t('Write "{0}"', text), [{ span, text }], options);

/** A line put in after `line`; it is indented by two blanks. */
export const lineAfter = (line: number, lineText: string, added: string): Edit => ({
  span: { line, start: lineText.length, end: lineText.length },
  text: `\n  ${added}`,
});

/** A line put in above `line`, indented as that is. */
export const lineBefore = (line: number, lineText: string, added: string): Edit => ({
  span: { line, start: 0, end: 0 },
  text: `${/^\s*/.exec(lineText)?.[0] ?? ''}${added}\n`,
});

/** The depth `metres`, written in the unit that stands at `place`, so that nothing else on the line changes meaning. */
export function depthAs(place: Depth | Measure, metres: number): string {
  const sign = metres < 0 ? '+' : '';
  const unit = place.unitWritten ? ` ${place.unit}` : '';
  return `${sign}${figureIn(Math.abs(metres), place.unit)}${unit}`;
}

const marked = (text: string, { approximate, doubtful, bound }: Depth): string =>
  `${bound ?? ''}${approximate ? '~' : ''}${text}${doubtful ? '?' : ''}`;

/** Another depth of the log as it must be written at `place`: as it stands where both count alike, its marks always. */
export function takenOver(place: Depth, to: Depth): string {
  const countAlike = place.unit === to.unit && !place.unitWritten && !to.unitWritten && place.datum === to.datum;
  if (countAlike && !to.td) return to.written;
  const unit = place.unitWritten ? ` ${place.unit}` : '';
  const figure = depthAs({ ...place, unitWritten: false }, to.value ?? 0);
  return `${marked(figure, to)}${unit}`;
}

/** A fix that sets the depth at `place` to another depth of the log; none where `place` does not stand on `line`. */
export function moveDepth(
  titleOf: (depth: string) => string,
  line: number,
  place: Depth | null,
  to: Depth | null,
  preferred = false,
): Fix[] {
  if (!place || place.span.line !== line || to?.value === null || to?.value === undefined) return [];
  const text = takenOver(place, to);
  return [fix(titleOf(text), [{ span: place.span, text }], { preferred })];
}

/** A fix that writes the top and the bottom of an interval the other way round. */
export function exchangeEnds({ top, bottom, span }: Interval, text: string): Fix[] {
  if (!top || !bottom || top.span.line !== span.line || bottom.span.line !== span.line) return [];
  const written = ({ start, end }: Columns) => text.slice(start, end);
  const edits = [
    { span: top.span, text: written(bottom.span) },
    { span: bottom.span, text: written(top.span) },
  ];
  return [fix(l10n.t('Exchange the two depths'), edits, { preferred: true })];
}

/** A fix that puts `text` in behind a place. */
export const writeAfter = (
  title: string,
  { line, end }: Span,
  text: string,
  options: Partial<Pick<Fix, 'preferred' | 'safe'>> = {},
): Fix => fix(title, [{ span: { line, start: end, end }, text }], options);

/** A fix that puts `text` in before the first word of a line. */
export function writeBefore(title: string, line: number, lineText: string, text: string): Fix {
  const start = lineText.length - lineText.trimStart().length;
  return fix(title, [{ span: { line, start, end: start }, text }], { preferred: true });
}

/**
 * A fix that takes something out of a line and keeps it as the line's remark; none where the line has a remark or a
 * comment already, in which it would be lost.
 */
export function keepAsRemark({ line, start, end }: Span, lineText: string): Fix[] {
  if (/[;#]/.test(lineText)) return [];
  const before = lineText.slice(0, start).replace(/[\s,]+$/, '').length;
  const written = lineText.slice(start, end);
  const last = lineText.trimEnd().length;
  const edits =
    end >= last
      ? [{ span: { line, start: before, end: lineText.length }, text: `  ; ${written}` }]
      : [
          { span: { line, start: before, end }, text: '' },
          { span: { line, start: last, end: lineText.length }, text: `  ; ${written}` },
        ];
  return before === 0 ? [] : [fix(l10n.t('Keep "{0}" as a remark', shortened(written)), edits)];
}

interface Placed {
  readonly line: number;
  readonly interval: Interval;
}

/** A fix that puts a contact halfway between the two depths given for it, marked as about; none where one is not its own. */
export function contactBetween(upper: Placed, lower: Placed): Fix[] {
  const [base, top] = [upper.interval.bottom, lower.interval.top];
  if (base?.value == null || top?.value == null || base.span.line !== upper.line || top.span.line !== lower.line)
    return [];
  const middle = (base.value + top.value) / 2;
  const [above, below] = [`~${depthAs(base, middle)}`, `~${depthAs(top, middle)}`];
  const edits = [
    { span: base.span, text: above },
    { span: top.span, text: below },
  ];
  return [fix(l10n.t('Put the contact about halfway: {0}', below), edits)];
}
