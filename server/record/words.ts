import type { FileUnits, Fill, PipeString } from '../model/log.ts';
import { shownUnit, unitLabel } from './display.ts';
import { decimals, formatNumber } from './format-number.ts';
import { nameOf } from './geometry/strings.ts';
import type { Stretch } from './intervals.ts';

const mostDecimals = 2;

/** A depth in the file's unit with as many decimals as it needs, two at most: `7.2 m`. */
export const depthText = (metres: number, units: FileUnits): string =>
  `${depthNumber(metres, units)} ${unitLabel(units.depth)}`;

/** A stretch of depth in the file's unit: `0 – 7.2 m`. */
export const stretchText = ({ top, bottom }: Stretch, units: FileUnits): string =>
  `${depthNumber(top, units)} – ${depthText(bottom, units)}`;

const depthNumber = (metres: number, units: FileUnits): string => {
  const number = metres / shownUnit(units.depth).factor;
  const text = formatNumber(Math.abs(number), decimals(mostDecimals)).replace(/\.?0+$/, '');
  return number < 0 && text !== '0' ? `+${text}` : text;
};

/** `grout 1 of casing 1`, as the record calls a fill. */
export const fillName = (fill: Fill, string: PipeString): string => `${fill.kind} ${fill.number} of ${nameOf(string)}`;
