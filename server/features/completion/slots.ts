import type { Columns } from '../../../grammar/span.ts';
import type { Slot } from '../../../grammar/table.ts';
import { descriptionLists } from '../../../grammar/terms/index.ts';
import type { ListId } from '../../../grammar/terms/term.ts';
import { amountsOf } from '../amounts.ts';
import type { CompletionPlace } from './place.ts';

const growsWithWord = ({ lead, word }: CompletionPlace, end: number): boolean =>
  word !== '' && end <= lead.length && lead.slice(end).trim() === '';

const isBeingTyped = (place: CompletionPlace, { start, end }: Columns): boolean =>
  (start <= place.at.column && end >= place.lead.length) || growsWithWord(place, end);

const isFilled = (place: CompletionPlace, slot: Slot): boolean =>
  place.line.items.some((item) => item.slot === slot.slot && !isBeingTyped(place, item));

/** The lists whose terms a slot takes. */
export const listsOf = (slot: Slot): readonly ListId[] =>
  slot.accepts.flatMap((accepts) => {
    if (accepts.kind === 'terms') return accepts.lists;
    return accepts.kind === 'description' ? descriptionLists : [];
  });

/** The slots of the row that the line still lacks, and those that may stand more than once. */
export const openSlots = (place: CompletionPlace): readonly Slot[] =>
  (place.row?.slots ?? []).filter((slot) => slot.many || !isFilled(place, slot));

const gluedNumber = /[\d¼½¾⅛⅜⅝⅞]$/;

/** True where the cursor touches a number, so that only a unit can follow. */
export const touchesNumber = ({ lead }: CompletionPlace): boolean => gluedNumber.test(lead);

/** True where a number stands before the cursor that no item of the line has taken: it waits for its unit. */
export function waitsForUnit({ lead, line }: CompletionPlace): boolean {
  const number = /[\d¼½¾⅛⅜⅝⅞]\s$/.test(lead) ? lead.trimEnd().length : null;
  return number !== null && !amountsOf(line).some(({ quantity }) => quantity.start < number && quantity.end >= number);
}

const interval =
  /[\d"'?]\s*(?:m|ft|cm|in)?\s*(?:-|–|—|\bto\b)\s*[+~]?\s*(?:[\d.]+|td|\?)|^\s*(?:-|–|—)\s*[+~]?\s*(?:[\d.]+|td|\?)/i;
const oneDepth = /[\d?]|\btd\b/i;

/** True where the depths that the row begins with are written. */
export const depthsWritten = ({ row, body }: CompletionPlace): boolean => {
  if (row === null || row.depths === 'none' || row.depths === 'optional') return true;
  return (row.depths === 'interval' ? interval : oneDepth).test(body);
};
