import type { Atom } from './atoms.ts';
import type { Columns } from './span.ts';
import type { Quantity } from './tree.ts';

const numberWord = /^(?:no|nos|number)\.?$/i;

const isNumberWord = (atom: Atom | undefined): boolean => atom?.kind === 'word' && numberWord.test(atom.text);

/** True for a plain number of one or two digits, which a seam or a bed may have. */
const isNumberOfBed = (atom: Atom | undefined): atom is Quantity =>
  atom?.kind === 'quantity' &&
  atom.unit === null &&
  atom.high === null &&
  !(atom.approximate || atom.plus || atom.bound !== null) &&
  /^\d{1,2}$/.test(atom.figure);

/** The name, and the question mark behind it where the number is doubtful. */
function named(text: string, { start, end }: Columns, doubtful: boolean): readonly Atom[] {
  const ends = doubtful ? end - 1 : end;
  const name: Atom = { kind: 'text', text: text.slice(start, ends), start, end: ends };
  return doubtful ? [name, { kind: 'unknown', start: ends, end }] : [name];
}

/** Makes a name of the number of a seam or a bed, as in `No. 6 coal` and `#4 seam`. */
export function nameNumbers(text: string, atoms: readonly Atom[]): readonly Atom[] {
  if (!atoms.some((atom) => atom.kind === 'hash-number' || isNumberWord(atom))) return atoms;
  return atoms.flatMap((atom, at) => {
    const [before, next] = [atoms[at - 1], atoms[at + 1]];
    if (atom.kind === 'hash-number') return named(text, atom, false);
    if (isNumberWord(before) && isNumberOfBed(atom))
      return named(text, { start: before?.start ?? atom.start, end: atom.end }, atom.doubtful);
    return isNumberWord(atom) && isNumberOfBed(next) ? [] : [atom];
  });
}
