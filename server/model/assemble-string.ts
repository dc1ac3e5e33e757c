import { type Draft, look, type Place, take, takeBelow } from './draft.ts';
import { fillFacts } from './fills.ts';
import type { Fill, PipeString } from './log.ts';
import { atDepthFact, centralizersFact, cutFact, jointsFact, opensString, screenFact, stringFacts } from './strings.ts';

const freshString = (head: PipeString, number: number): PipeString => ({
  ...head,
  number,
  screens: [],
  fills: [],
  packers: [],
  pitless: [],
  cuts: [],
});

function openString(draft: Draft, place: Place, kind: PipeString['kind']): void {
  const string = freshString(take(draft, place, stringFacts[kind]), draft.log.strings.length + 1);
  if (kind === 'screen') string.screens.push(look(draft, place, screenFact));
  draft.log.strings.push(string);
  draft.string = string;
  for (const name of ['fills', 'plugs', 'screens']) draft.bases.delete(name);
}

/** `casing` and `liner` open a string. */
export function addString(draft: Draft, place: Place): void {
  const kind = opensString(place.line, true);
  if (kind) openString(draft, place, kind);
}

/** A screen hangs on the string above, or is a string of its own. */
export function addScreen(draft: Draft, place: Place): void {
  const { string } = draft;
  const kind = opensString(place.line, string !== null);
  if (kind) openString(draft, place, kind);
  else if (string) {
    const screen = takeBelow(draft, place, screenFact, 'screens');
    string.screens.push({ ...screen, number: string.screens.length + 1 });
  }
}

const numbered = (fill: Fill, among: readonly Fill[]): Fill => {
  const number = among.filter(({ kind }) => kind === fill.kind).length + 1;
  return number === fill.number ? fill : { ...fill, number };
};

/** Grout, seal and pack continue each other; a plug stands inside the string and is no base for them. */
export const addFill =
  (kind: 'grout' | 'seal' | 'pack' | 'plug') =>
  (draft: Draft, place: Place): void => {
    const { string } = draft;
    if (!string) return;
    const fill = takeBelow(draft, place, fillFacts[kind], kind === 'plug' ? 'plugs' : 'fills');
    string.fills.push(numbered(fill, string.fills));
  };

/** The first shoe of a string stands. */
export function addShoe(draft: Draft, place: Place): void {
  if (draft.string) draft.string.shoe ??= take(draft, place, atDepthFact);
}

export function addCentralizers(draft: Draft, place: Place): void {
  const { string } = draft;
  if (!string) return;
  const more = take(draft, place, centralizersFact);
  const known = string.centralizers;
  string.centralizers = known
    ? {
        ...known,
        positions: [...known.positions, ...more.positions],
        every: known.every ?? more.every,
        inSet: known.inSet ?? more.inSet,
      }
    : more;
}

export function addJoints(draft: Draft, place: Place): void {
  const { string } = draft;
  if (!string) return;
  const more = take(draft, place, jointsFact);
  const known = string.joints;
  string.joints = known ? { ...known, lengths: [...known.lengths, ...more.lengths] } : more;
}

export const addFitting =
  (kind: 'packers' | 'pitless') =>
  (draft: Draft, place: Place): void => {
    draft.string?.[kind].push(take(draft, place, atDepthFact));
  };

export function addCut(draft: Draft, place: Place): void {
  draft.string?.cuts.push(take(draft, place, cutFact));
}
