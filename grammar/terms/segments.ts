import type { Atom } from './atoms.ts';
import type { Term } from './term.ts';

export type SegmentKind = 'phrase' | 'bound' | 'colour' | 'quality' | 'adjective' | 'barrier' | 'symbol';

/** What the commas of the long form part: a material with what stands before it, a colour, a quality, … */
export interface Segment {
  readonly kind: SegmentKind;
  /** The link that ties it to what stands before it. */
  readonly lead: Atom | null;
  /** In the written order. A `phrase` ends in its material and the layers that it forms; a `bound` begins with its amount. */
  readonly atoms: readonly Atom[];
}

interface Reading {
  readonly segments: Segment[];
  pending: Atom[];
  lead: Atom | null;
}

const isStranger = (atom: Atom | undefined): boolean => atom?.kind === 'name' || atom?.kind === 'unknown';

const push = (reading: Reading, kind: SegmentKind, atoms: readonly Atom[]): void => {
  reading.segments.push({ kind, lead: reading.lead, atoms });
  reading.lead = null;
};

const kindAlone = (atom: Atom): SegmentKind => {
  if (atom.kind === 'colour' || atom.kind === 'adjective' || atom.kind === 'symbol') return atom.kind;
  return atom.kind === 'name' || atom.kind === 'unknown' ? 'barrier' : 'quality';
};

const flush = (reading: Reading): void => {
  const { pending } = reading;
  reading.pending = [];
  if (pending.some((atom) => atom.kind === 'filler')) {
    push(reading, 'barrier', pending);
    return;
  }
  let at = 0;
  for (let atom = pending[at]; atom !== undefined; atom = pending[at]) {
    let end = at + 1;
    while (isStranger(atom) && isStranger(pending[end])) end += 1;
    push(reading, kindAlone(atom), pending.slice(at, end));
    at = end;
  }
};

const layersEnd = (atoms: readonly Atom[], at: number): number => {
  let end = at;
  while (atoms[end]?.kind === 'layer' && atoms[end]?.parted === false) end += 1;
  return end;
};

/** The place of the next material that nothing parts from here, or -1. */
const materialFrom = (atoms: readonly Atom[], at: number): number => {
  for (let place = at; ; place += 1) {
    const atom = atoms[place];
    if (atom === undefined || atom.parted) return -1;
    if (atom.kind === 'material') return place;
    if (atom.kind === 'amount' || atom.kind === 'link' || atom.kind === 'symbol') return -1;
  }
};

const strangersEnd = (atoms: readonly Atom[], at: number): number => {
  let end = at;
  while (atoms[end]?.parted === false && (isStranger(atoms[end]) || atoms[end]?.kind === 'filler')) end += 1;
  return end;
};

/** Where what a word for amount binds ends: its material, those that links tie to it, or else one word. */
const boundEnd = (atoms: readonly Atom[], at: number): number => {
  let end = at + 1;
  while (atoms[end]?.kind === 'amount' && atoms[end]?.parted === false) end += 1;
  const noun = materialFrom(atoms, end);
  if (noun < 0) {
    const next = atoms[end];
    const binds = next !== undefined && !next.parted && next.kind !== 'link' && next.kind !== 'symbol';
    return binds ? strangersEnd(atoms, end + 1) : end;
  }
  end = layersEnd(atoms, noun + 1);
  while (atoms[end]?.kind === 'link' && atoms[end]?.parted === false) {
    const further = materialFrom(atoms, end + 1);
    if (further < 0) return end;
    end = layersEnd(atoms, further + 1);
  }
  return end;
};

/** Ends what a comma ends; a link right before it ties nothing. */
const closePart = (reading: Reading): void => {
  flush(reading);
  if (reading.lead !== null) push(reading, 'barrier', []);
};

const takeLink = (reading: Reading, atom: Atom): void => {
  closePart(reading);
  reading.lead = atom;
};

/** True for layers that a word ties to what follows, as in `streaks of shale`. */
const isOpenLayer = (atoms: readonly Atom[], at: number): boolean => {
  const next = atoms[layersEnd(atoms, at + 1)];
  return next?.kind === 'filler' && !next.parted;
};

/** Takes layers with what stands before them, as in `blue band`. */
const takeLayer = (reading: Reading, atoms: readonly Atom[], at: number): number => {
  const end = layersEnd(atoms, at + 1);
  const whole = [...reading.pending, ...atoms.slice(at, end)];
  const isStrange = whole.some((atom) => isStranger(atom) || atom.kind === 'filler');
  reading.pending = [];
  push(reading, isStrange ? 'barrier' : 'quality', whole);
  return end;
};

/** Takes the segment that begins or ends at an atom, and gives the place after it. */
const take = (reading: Reading, atoms: readonly Atom[], at: number, atom: Atom): number => {
  if (atom.parted) closePart(reading);
  if (atom.kind === 'material') {
    const end = layersEnd(atoms, at + 1);
    const before = reading.pending;
    reading.pending = [];
    push(reading, 'phrase', [...before, ...atoms.slice(at, end)]);
    return end;
  }
  if (atom.kind === 'layer' && !isOpenLayer(atoms, at)) return takeLayer(reading, atoms, at);
  if (atom.kind === 'amount') {
    flush(reading);
    const end = boundEnd(atoms, at);
    push(reading, 'bound', atoms.slice(at, end));
    return end;
  }
  if (atom.kind === 'link') takeLink(reading, atom);
  else if (atom.kind === 'symbol') {
    flush(reading);
    push(reading, 'symbol', [atom]);
  } else reading.pending.push(atom);
  return at + 1;
};

/** Parts atoms into segments, in the written order; a link that ties nothing makes a barrier of its own. */
export const segmentsOf = (atoms: readonly Atom[]): readonly Segment[] => {
  const reading: Reading = { segments: [], pending: [], lead: null };
  let at = 0;
  for (let atom = atoms[at]; atom !== undefined; atom = atoms[at]) at = take(reading, atoms, at, atom);
  closePart(reading);
  return reading.segments;
};

/** False for words that stand for ground that was not seen, or that the interval above describes. */
export const isSeen = (term: Term): boolean => term.ground?.class !== 'unknown';

export const materialOf = (segment: Segment): Atom | null =>
  segment.atoms.find((atom) => atom.kind === 'material') ?? null;

const strange = new Set(['name', 'unknown', 'filler', 'layer', 'degree']);

const beforeMaterial = (segment: Segment): readonly Atom[] => {
  const noun = segment.atoms.findIndex((atom) => atom.kind === 'material');
  return segment.atoms.slice(0, Math.max(noun, 0));
};

/** True where a word that no list knows stands before the material, so that nothing may move past it. */
export const isFrozen = (segment: Segment): boolean => beforeMaterial(segment).some((atom) => strange.has(atom.kind));

/** True where a colour or a quality stands right before the material. */
export const hasOwnQualities = (segment: Segment): boolean =>
  beforeMaterial(segment).some((atom) => atom.kind === 'colour' || atom.kind === 'quality');
