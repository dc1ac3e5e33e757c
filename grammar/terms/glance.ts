import { asWritten, kindOfSense, links, type Run, runFrom, strangerKindAt, symbolText, unquoted } from './atoms.ts';
import type { DescriptionText } from './description.ts';
import { descriptionLists, matchAt } from './index.ts';
import type { Piece } from './pieces.ts';
import { isSeen } from './segments.ts';
import type { Term } from './term.ts';

/** What the single words of a description tell, before anyone puts them together. */
export interface Glance {
  readonly symbols: readonly DescriptionText[];
  readonly names: readonly DescriptionText[];
  readonly unknown: readonly DescriptionText[];
  /** The material that the rest speaks about; undefined where only the whole tells it. */
  readonly principal: Term | null | undefined;
}

const nothing: readonly DescriptionText[] = [];

/** The words of a description, looked at one after another. */
class Look {
  symbols: DescriptionText[] | null = null;
  names: DescriptionText[] | null = null;
  unknown: DescriptionText[] | null = null;
  amount = false;
  seen: Term | null = null;
  firstMaterial: Term | null = null;
  formation: Term | null = null;

  takeMark(piece: Piece): void {
    if (piece.kind === 'with') this.takeAmount();
    if (piece.kind === 'name') {
      this.names ??= [];
      this.names.push({ text: unquoted(piece), start: piece.start, end: piece.end });
    }
    if (piece.kind !== 'symbol') return;
    this.symbols ??= [];
    this.symbols.push({ text: symbolText(piece), start: piece.start, end: piece.end });
  }

  takeAmount(): void {
    if (this.seen === null) this.amount = true;
  }

  takeMaterial(term: Term): void {
    this.firstMaterial ??= term;
    if (this.seen === null && isSeen(term)) this.seen = term;
  }

  takeText(kind: 'names' | 'unknown', run: Run, at: number, length: number): void {
    const texts = this[kind] ?? [];
    this[kind] = texts;
    const [first, last] = [run.pieces[at], run.pieces[at + length - 1]];
    texts.push({ text: asWritten(run, at, length), start: first?.start ?? 0, end: last?.end ?? 0 });
  }

  /** Takes the term or word at a place of a run, and gives how many words it has. */
  takeWord(run: Run, at: number): number {
    if (links.has((run.words[at] ?? '').toLowerCase())) return 1;
    const found = matchAt(run.words, at, descriptionLists);
    const kind = found ? kindOfSense(found.sense) : strangerKindAt(run, at);
    const length = found?.length ?? 1;
    if (kind === 'amount') this.takeAmount();
    else if (kind === 'material' && found) this.takeMaterial(found.sense.term);
    else if (kind === 'unknown') this.takeText('unknown', run, at, 1);
    else if (kind === 'symbol') {
      this.symbols ??= [];
      this.symbols.push({
        text: run.words[at] ?? '',
        start: run.pieces[at]?.start ?? 0,
        end: run.pieces[at]?.end ?? 0,
      });
    } else if (kind === 'name') {
      this.formation ??= found?.sense.term ?? null;
      this.takeText('names', run, at, length);
    }
    return length;
  }

  get principal(): Term | null | undefined {
    if (this.amount) return undefined;
    return this.seen ?? this.firstMaterial ?? this.formation;
  }
}

/** Looks at the pieces of a description: much cheaper than reading what they say together. */
export function glanceAt(pieces: readonly Piece[]): Glance {
  const look = new Look();
  for (let at = 0; at < pieces.length; ) {
    const piece = pieces[at];
    if (piece === undefined) break;
    if (piece.kind !== 'word' && piece.kind !== 'and') {
      look.takeMark(piece);
      at += 1;
      continue;
    }
    const { run, next } = runFrom(pieces, at);
    for (let word = 0; word < run.words.length; ) word += look.takeWord(run, word);
    at = next;
  }
  return {
    symbols: look.symbols ?? nothing,
    names: look.names ?? nothing,
    unknown: look.unknown ?? nothing,
    principal: look.principal,
  };
}
