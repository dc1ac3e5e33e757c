import { problem } from './atoms.ts';
import { emptyQuantity } from './empty-quantity.ts';
import type { Columns } from './span.ts';
import { matchAt } from './terms/index.ts';
import type { Item, Problem } from './tree.ts';
import { unitById } from './units.ts';

interface Piece extends Columns {
  readonly text: string;
}

const pieces = (plain: string, start: number, end: number): Piece[] =>
  [...plain.slice(start, end).matchAll(/[^\s,]+/g)].map((found) => ({
    text: found[0],
    start: start + found.index,
    end: start + found.index + found[0].length,
  }));

const degrees = /^([+-]?)(\d{1,3}(?:\.\d+)?)°?(\?)?([NSEW])?$/i;
const sexagesimal = /^([+-]?)(\d{1,3})°(\d{1,2}(?:\.\d+)?)'(?:(\d{1,2}(?:\.\d+)?)(?:"|''))?(\?)?([NSEW])?$/i;

interface Angle {
  readonly value: number;
  readonly decimals: number;
  readonly minus: boolean;
  readonly doubtful: boolean;
  readonly letter: string;
}

const decimalsOf = (text: string): number => text.split('.')[1]?.length ?? 0;

/** `44.6128`, `-78.3042`, `44.6128N` or `44°36'46"N`. */
function angleOf(text: string): Angle | null {
  const plainAngle = degrees.exec(text);
  if (plainAngle) {
    const [, sign = '', figure = '', doubt = '', letter = ''] = plainAngle;
    return { value: Number(figure), decimals: decimalsOf(figure), minus: sign === '-', doubtful: doubt !== '', letter };
  }
  const parts = sexagesimal.exec(text);
  if (!parts) return null;
  const [, sign = '', whole = '0', minutes = '0', seconds = '0', doubt = '', letter = ''] = parts;
  const value = Number(whole) + Number(minutes) / 60 + Number(seconds) / 3600;
  return { value, decimals: 6, minus: sign === '-', doubtful: doubt !== '', letter };
}

const angleItem = (slot: string, angle: Angle, at: Columns, figure: string): Item => ({
  slot,
  label: null,
  start: at.start,
  end: at.end,
  value: {
    ...emptyQuantity(at),
    number: angle.value,
    decimals: angle.decimals,
    minus: angle.minus || /[SW]/i.test(angle.letter),
    doubtful: angle.doubtful,
    figure,
    start: at.start,
    end: at.end,
  },
});

const lengthPattern = /^(\d+(?:\.\d+)?)(m|ft)?(\?)?$/i;

function lengthItem(slot: string, piece: Piece, unitPiece: Piece | null, label: Piece | null): Item | null {
  const found = lengthPattern.exec(piece.text);
  if (!found) return null;
  const [, figure = '', unit, doubt] = found;
  const start = label?.start ?? piece.start;
  const end = unitPiece?.end ?? piece.end;
  return {
    slot,
    label: label ? { start: label.start, end: label.end, written: label.text, term: null } : null,
    start,
    end,
    value: {
      ...emptyQuantity({ start: piece.start, end }),
      number: Number(figure),
      unit: unitById((unit ?? unitPiece?.text ?? 'm').toLowerCase()) ?? null,
      unitAt: unitPiece ?? null,
      decimals: decimalsOf(figure),
      doubtful: doubt !== undefined,
      figure,
      start: piece.start,
      end,
    },
  };
}

const textItem = (slot: string, piece: Piece): Item => ({
  slot,
  label: null,
  start: piece.start,
  end: piece.end,
  value: { kind: 'text', text: piece.text, start: piece.start, end: piece.end },
});

/** What a `place` line says, and what in it could not be read. */
export function readPlace(plain: string, start: number, end: number): { items: Item[]; problems: Problem[] } {
  const all = pieces(plain, start, end);
  const items: Item[] = [];
  const problems: Problem[] = [];
  const lengthUnit = (at: number): Piece | null => (/^(m|ft)$/i.test(all[at]?.text ?? '') ? (all[at] ?? null) : null);
  let i = 0;
  const push = (item: Item | null, piece: Piece): void => {
    if (item) items.push(item);
    else problems.push(problem('unreadable', piece, piece.text));
  };
  if (/^utm$/i.test(all[0]?.text ?? '')) {
    i = 1;
    const zone = all[i];
    if (zone && /^\d{1,2}[A-Z]?$/i.test(zone.text)) {
      items.push(textItem('zone', zone));
      i++;
    }
    for (const slot of ['easting', 'northing']) {
      const piece = all[i];
      if (!piece) break;
      const item = lengthItem(slot, piece, lengthUnit(i + 1), null);
      push(item, piece);
      i += item && lengthUnit(i + 1) ? 2 : 1;
    }
  } else {
    for (const slot of ['latitude', 'longitude']) {
      const piece = all[i];
      if (!piece) break;
      if (piece.text === '?') {
        items.push({
          slot,
          label: null,
          start: piece.start,
          end: piece.end,
          value: { kind: 'unknown', start: piece.start, end: piece.end },
        });
        i++;
        continue;
      }
      const letter = /^[NSEW]$/i.test(all[i + 1]?.text ?? '') ? all[i + 1] : undefined;
      const angle = angleOf(piece.text + (letter?.text ?? ''));
      const at = { start: piece.start, end: letter?.end ?? piece.end };
      push(angle ? angleItem(slot, angle, at, piece.text.replace(/^[+-]|[NSEW]$/gi, '')) : null, piece);
      i += letter ? 2 : 1;
    }
  }
  while (i < all.length) {
    const piece = all[i];
    if (!piece) break;
    const next = all[i + 1];
    if (/^(accuracy|within|\+\/-|±)$/i.test(piece.text) && next) {
      const unit = lengthUnit(i + 2);
      push(lengthItem('accuracy', next, unit, piece), next);
      i += unit ? 3 : 2;
      continue;
    }
    const glued = /^(?:\+\/-|±)(.+)$/.exec(piece.text);
    if (glued) {
      const inner = { ...piece, text: glued[1] ?? '' };
      const unit = lengthUnit(i + 1);
      push(lengthItem('accuracy', inner, unit, piece), piece);
      i += unit ? 2 : 1;
      continue;
    }
    const match = matchAt(
      all.slice(i, i + 3).map((each) => each.text.toLowerCase()),
      0,
      ['geodetic-datum'],
    );
    const last = match ? all[i + match.length - 1] : undefined;
    if (match && last) {
      const at = { start: piece.start, end: last.end };
      items.push({
        slot: 'datum',
        label: null,
        ...at,
        value: { kind: 'term', list: match.sense.list, term: match.sense.term, ...at },
      });
      i += match.length;
      continue;
    }
    problems.push(problem('unreadable', piece, piece.text));
    i++;
  }
  return { items, problems };
}
