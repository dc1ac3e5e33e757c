import * as l10n from '@vscode/l10n';
import { exact, unitById } from '../../../grammar/units.ts';
import { inBothSystems, numberText } from '../display.ts';
import type { HoverPlace } from './source.ts';

const thousandth = exact.inch / 1000;

/** The width in both systems and as a slot number, which counts thousandths of an inch. */
function slotWidthText(width: number, diameterUnit: string): string | null {
  const unit = unitById(diameterUnit);
  if (unit === undefined) return null;
  const shown = inBothSystems(width, unit).join('** = **');
  return l10n.t('**{0}**: {1} thousandths of an inch', shown, numberText(Number((width / thousandth).toFixed(1))));
}

/** What the slots of the screen on the line come to; null where the line has none, or their width is not known. */
export function slotWidthLine({ snapshot: { log }, at }: HoverPlace): string | null {
  const screen = log.strings.flatMap(({ screens }) => screens).find(({ line }) => line === at.line);
  const width = screen?.slot?.value ?? null;
  return width === null ? null : slotWidthText(width, log.units.diameter);
}
