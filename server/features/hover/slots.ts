import type { Columns } from '../../../grammar/span.ts';
import type { Slot } from '../../../grammar/table.ts';
import type { Item, Line } from '../../../grammar/tree.ts';
import { bodyRowOf, rowOf } from '../amounts.ts';

/** What the items of a `place` line say; its row of the table lists no slots. */
export const placeDocs: Readonly<Record<string, string>> = {
  latitude: 'latitude',
  longitude: 'longitude',
  zone: 'UTM zone',
  easting: 'UTM easting',
  northing: 'UTM northing',
  datum: 'the datum it is counted from',
  accuracy: 'how good it is',
};

/** The slot of the table of that name, among those that the line takes. */
export const slotOf = (line: Line, name: string): Slot | null =>
  bodyRowOf(line)?.slots.find(({ slot }) => slot === name) ?? null;

/** What the table says of an item; what it says of the line where the line is nothing but that item. */
export const docOf = (line: Line, item: Item): string =>
  slotOf(line, item.slot)?.doc ?? (line.row === 'place' ? placeDocs[item.slot] : rowOf(line)?.doc) ?? item.slot;

/** The item that holds some columns. */
export const itemHolding = (line: Line, { start, end }: Columns): Item | null =>
  line.items.find(({ value }) => value.start <= start && end <= value.end) ?? null;
