import type { Slot } from '../../../grammar/table.ts';
import type { CompletionPlace } from './place.ts';

const isFilled = ({ line, at, word }: CompletionPlace, slot: Slot): boolean =>
  line.items.some((item) => item.slot === slot.slot && !(item.start <= at.column && item.end >= at.column - word.length));

/** The slots of the row that the line still lacks, and those that may stand more than once. */
export const openSlots = (place: CompletionPlace): readonly Slot[] =>
  (place.row?.slots ?? []).filter((slot) => slot.many || !isFilled(place, slot));

/** True where a number stands right before the word or the cursor. */
export const atNumber = ({ lead }: CompletionPlace): boolean => /[\d¼½¾⅛⅜⅝⅞]\s?$/.test(lead);

const gluedNumber = /[\d¼½¾⅛⅜⅝⅞]$/;

/** True where the cursor touches a number, so that only a unit can follow. */
export const touchesNumber = ({ lead }: CompletionPlace): boolean => gluedNumber.test(lead);

const depthsOnly = /^\s*(?:[+~]?\s*[\d.'"¼½¾⅛⅜⅝⅞/]+\s*)?(?:(?:m|ft|cm|in|-|–|—|to)\s*)*(?:[+~]?\s*[\d.'"¼½¾⅛⅜⅝⅞/]+\s*)?$/i;

/** True where nothing but the line's depths stand before the word. */
export const endsInDepth = ({ row, body }: CompletionPlace): boolean =>
  row !== null && row.depths !== 'none' && depthsOnly.test(body);

const interval = /[\d"'?]\s*(?:m|ft|cm|in)?\s*(?:-|–|—|\bto\b)\s*[+~]?\s*(?:[\d.]+|td|\?)|^\s*(?:-|–|—)\s*[+~]?\s*(?:[\d.]+|td|\?)/i;
const oneDepth = /[\d?]|\btd\b/i;

/** True where the depths that the row begins with are written. */
export const depthsWritten = ({ row, body }: CompletionPlace): boolean => {
  if (row === null || row.depths === 'none' || row.depths === 'optional') return true;
  return (row.depths === 'interval' ? interval : oneDepth).test(body);
};
