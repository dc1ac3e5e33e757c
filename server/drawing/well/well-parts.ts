import type { Record as WellRecord } from '../../record/record.ts';
import type { Part } from '../shapes.ts';
import { cutParts } from './cuts.ts';
import { doubtParts } from './doubts.ts';
import { annularParts, plugParts } from './fills.ts';
import { capParts, fittingParts } from './fittings.ts';
import type { WellFrame } from './frame.ts';
import type { DrawnString } from './geometry.ts';
import { groundParts } from './ground-line.ts';
import { holeParts } from './hole.ts';
import { pumpParts } from './pump.ts';
import type { PumpingLevel } from './pumping-level.ts';
import { screenParts, stringPart } from './strings.ts';
import { gasParts, lostParts } from './trouble-marks.ts';
import { foundParts, levelParts } from './water-marks.ts';

const isStaying = ({ string }: DrawnString): boolean => !string.temporary;

/** The well as built, in the order in which it is painted: hole, strings from the outside in, what stands around them. */
export const wellParts = (frame: WellFrame, record: WellRecord, pumping: readonly PumpingLevel[]): Part[] => [
  ...groundParts(frame, record.log),
  ...holeParts(frame, record.log),
  ...frame.well.strings.filter(isStaying).map((drawn) => stringPart(frame, drawn)),
  ...annularParts(frame, record),
  ...frame.well.strings.filter((drawn) => !isStaying(drawn)).map((drawn) => stringPart(frame, drawn)),
  ...frame.well.strings.flatMap((drawn) => [
    ...screenParts(frame, drawn),
    ...fittingParts(frame, drawn),
    ...cutParts(frame, drawn),
  ]),
  ...pumpParts(frame, record.log),
  ...plugParts(frame, record.log),
  ...capParts(frame, record.log),
  ...foundParts(frame, record.log),
  ...gasParts(frame, record.log),
  ...lostParts(frame, record.log),
  ...levelParts(frame, record.log, pumping),
  ...doubtParts(frame, record.log, pumping),
];
