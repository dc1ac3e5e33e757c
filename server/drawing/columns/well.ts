import { exaggerationWords } from '../well/frame.ts';
import { wellParts } from '../well/well-parts.ts';
import type { Column } from './column.ts';

/** The well as built. */
export const wellColumn: Column = {
  id: 'well',
  heading: () => 'Well as built',
  subheading: (_, frame) => (frame === null ? '' : exaggerationWords(frame)),
  width: 34,
  grows: false,
  rise: 0,
  isNeeded: () => true,
  labels: () => [],
  parts: ({ record, pumping }, { frame }) => (frame === null ? [] : wellParts(frame, record, pumping)),
};
