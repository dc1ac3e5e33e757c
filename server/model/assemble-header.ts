import { type Draft, isBare, type Place, take, takeBelow } from './draft.ts';
import {
  dateFact,
  distancesFact,
  existingFact,
  groundFact,
  photoFact,
  shiftFact,
  termsFact,
  textFact,
  textKeywords,
  textsFact,
} from './header.ts';
import { placeFact } from './place.ts';

type Add = (draft: Draft, place: Place) => void;

/** Of several lines with one keyword the first that says something counts. */
const firstOnly =
  (add: Add): Add =>
  (draft, place) => {
    const { row } = place.line;
    if (row === null || isBare(place) || draft.said.has(row)) return;
    draft.said.add(row);
    add(draft, place);
  };

const addText: Add = (draft, place) => {
  const text = take(draft, place, textFact);
  if (text !== null && place.line.row !== null) draft.log.header[place.line.row] = text;
};

const addDate =
  (which: 'began' | 'finished' | 'reported'): Add =>
  (draft, place) => {
    draft.log[which] = take(draft, place, dateFact);
  };

const addPlace: Add = (draft, place) => {
  draft.log.place = take(draft, place, placeFact);
};

const addGround: Add = (draft, place) => {
  draft.log.ground = take(draft, place, groundFact);
};

const addStatus: Add = (draft, place) => {
  draft.log.status = take(draft, place, termsFact)[0] ?? null;
};

const addDistances: Add = (draft, place) => {
  draft.log.distances.push(...take(draft, place, distancesFact));
};

/** How the keywords of the file are taken in. */
export const headerParts: readonly (readonly [row: string, add: Add])[] = [
  ...[...textKeywords].map((keyword) => [keyword, firstOnly(addText)] as const),
  ['rules', firstOnly((draft, place) => draft.log.packs.push(...take(draft, place, textsFact)))],
  ['place', firstOnly(addPlace)],
  ['ground', firstOnly(addGround)],
  ['use', firstOnly((draft, place) => draft.log.uses.push(...take(draft, place, termsFact)))],
  ['status', firstOnly(addStatus)],
  ['began', firstOnly(addDate('began'))],
  ['finished', firstOnly(addDate('finished'))],
  ['reported', firstOnly(addDate('reported'))],
  ['distance', addDistances],
  ['shift', (draft, place) => draft.log.shifts.push(take(draft, place, shiftFact))],
  ['existing', (draft, place) => draft.log.existing.push(takeBelow(draft, place, existingFact, 'existing'))],
  ['photo', (draft, place) => draft.log.photos.push(take(draft, place, photoFact))],
  ['note', (draft, place) => draft.log.notes.push(...take(draft, place, textsFact))],
];
