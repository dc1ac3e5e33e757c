import type { Columns } from '../../grammar/span.ts';
import type { Product } from '../../grammar/tree.ts';
import { exact, unitById } from '../../grammar/units.ts';
import { insideDiameter } from '../calculations/casing/inside-diameter.ts';
import { nominalOfOutside, outsideOfNominal, type PipeMaterial, wallOf } from '../calculations/casing/pipe-sizes.ts';
import { wallOfSdr } from '../calculations/casing/sdr-wall.ts';
import type { Outcome } from '../calculations/formula.ts';
import type { Measure, PipeSize, Word } from './log.ts';
import { measured, measureIn, unknownMeasure } from './measure.ts';
import { itemIn, type Source, spanOf } from './source.ts';

const plastics = new Set(['pvc', 'cpvc', 'abs', 'hdpe', 'fibreglass', 'ptfe']);

/** Plastic sizes count for plastics, and for pipe of unknown material that has a dimension ratio. */
function tableFor(material: Word | null, sdr: Measure | null): PipeMaterial {
  if (material) return plastics.has(material.id) ? 'plastic' : 'steel';
  return sdr?.value == null ? 'steel' : 'plastic';
}

/** Sizes written in millimetres are rounded: 168.3 mm stands for 6.625 in, 168.275 mm. */
const OUTSIDE_TOLERANCE = 0.0006;

const figureOf = (outcome: Outcome): number | null => (outcome.ok ? outcome.value : null);

/** What was written beside each other: `168.3 x 6.4`, `6 in`, or nothing. */
interface Written {
  readonly first: Measure | null;
  readonly wall: Measure | null;
}

/** `od 6.625 x 0.25`: a labelled size with its wall. */
const labelledProduct = (source: Source, slot: string): Product | null => {
  const value = itemIn(source, slot)?.value;
  return value?.kind === 'product' ? value : null;
};

/** A size that has a label of its own, without the wall behind it. */
function labelledSize(source: Source, slot: string): Measure | null {
  const product = labelledProduct(source, slot);
  return product ? measured(source, product.factors[0], source.setting.diameter) : measureIn(source, slot);
}

function writtenSize(source: Source): Written {
  const value = itemIn(source, 'size')?.value;
  const bare = source.setting.diameter;
  const labelled = labelledProduct(source, 'outside') ?? labelledProduct(source, 'nominal');
  if (labelled && !value) return { first: null, wall: measured(source, labelled.factors[1], bare) };
  if (value?.kind === 'quantity') return { first: measured(source, value, bare), wall: null };
  if (value?.kind === 'unknown') return { first: unknownMeasure(source, value, bare.id), wall: null };
  if (value?.kind !== 'product') return { first: null, wall: null };
  const [outside, wall] = value.factors;
  return { first: measured(source, outside, bare), wall: measured(source, wall, bare) };
}

const isWholeInches = ({ number, unit }: Measure): boolean =>
  unit === 'in' && number !== null && Number.isInteger(number);

/** The meaning of a size: outside diameter, nominal size, or one of the two. */
type Meaning = 'outside' | 'nominal' | 'either';

/**
 * A tabled outside diameter is outside. A whole inch size is nominal, unless a wall stands beside it: then it may be
 * either, where the two differ. In millimetres only a schedule makes a size nominal.
 */
function meaningOf(size: Measure, wall: Measure | null, schedule: number | null, table: PipeMaterial): Meaning {
  if (size.value === null) return 'outside';
  const tabled = figureOf(outsideOfNominal(size.value, table));
  if (isWholeInches(size)) {
    if (tabled === null || Math.abs(tabled - size.value) < OUTSIDE_TOLERANCE) return 'outside';
    return wall === null ? 'nominal' : 'either';
  }
  const isOutside = nominalOfOutside(size.value, table, OUTSIDE_TOLERANCE).ok;
  return schedule !== null && tabled !== null && !isOutside ? 'nominal' : 'outside';
}

interface Known {
  readonly outside: Measure | null;
  readonly nominal: Measure | null;
  readonly either: Measure | null;
}

function knownSizes(source: Source, { first, wall }: Written, schedule: number | null, table: PipeMaterial): Known {
  const outside = labelledSize(source, 'outside');
  const nominal = labelledSize(source, 'nominal');
  if (first === null) return { outside, nominal, either: null };
  const meaning = meaningOf(first, wall, schedule, table);
  return {
    outside: outside ?? (meaning === 'outside' ? first : null),
    nominal: nominal ?? (meaning === 'nominal' ? first : null),
    either: meaning === 'either' && outside === null && nominal === null ? first : null,
  };
}

const inches = ({ value, written }: Measure): string => {
  const inch = unitById('in');
  if (value === null || !inch) return written;
  const number = value / exact.inch;
  return Math.abs(number * 8 - Math.round(number * 8)) < 0.01 ? `${Math.round(number * 8) / 8} in` : written;
};

function basisOf({ outside, nominal, either }: Known, tabled: number | null): string {
  if (outside?.value != null) return 'written';
  if (either) return `${either.written} may be nominal or outside`;
  if (nominal?.value == null) return '';
  return tabled === null ? `no tabled size for ${inches(nominal)} nominal` : `tabled for ${inches(nominal)} nominal`;
}

function tabledWall(schedule: number | null, nominal: number | null, outside: number | null, table: PipeMaterial) {
  if (schedule === null) return null;
  const size = nominal ?? (outside === null ? null : figureOf(nominalOfOutside(outside, table, OUTSIDE_TOLERANCE)));
  return size === null ? null : figureOf(wallOf(size, String(schedule), table));
}

const sizeSlots = ['size', 'schedule', 'sdr', 'nominal', 'outside', 'inside', 'coupling'];

function columnsOfSize({ line }: Source): Columns | null {
  const parts = line.items.filter(({ slot }) => sizeSlots.includes(slot));
  if (parts.length === 0) return null;
  return { start: Math.min(...parts.map((part) => part.start)), end: Math.max(...parts.map((part) => part.end)) };
}

/** The size of the pipe on a line, with the tabled figures of nominal sizes, schedules and dimension ratios. */
export function pipeSizeOf(source: Source, material: Word | null): PipeSize {
  const written = writtenSize(source);
  const schedule = measureIn(source, 'schedule');
  const sdr = measureIn(source, 'sdr');
  const table = tableFor(material, sdr);
  const known = knownSizes(source, written, schedule?.value ?? null, table);
  const nominal = known.nominal?.value ?? null;
  const tabled = nominal === null ? null : figureOf(outsideOfNominal(nominal, table));
  const outsideDiameter = known.outside?.value ?? tabled;
  const ofRatio =
    sdr?.value == null || outsideDiameter === null ? null : figureOf(wallOfSdr(outsideDiameter, sdr.value));
  const wallThickness =
    written.wall?.value ?? tabledWall(schedule?.value ?? null, nominal, outsideDiameter, table) ?? ofRatio;
  const inside = measureIn(source, 'inside');
  const reckoned =
    outsideDiameter === null || wallThickness === null
      ? null
      : figureOf(insideDiameter(outsideDiameter, wallThickness));
  const columns = columnsOfSize(source);
  return {
    outside: known.outside,
    wall: written.wall,
    inside,
    coupling: measureIn(source, 'coupling'),
    nominal: known.nominal,
    schedule,
    sdr,
    outsideDiameter,
    wallThickness,
    insideDiameter: inside?.value ?? reckoned,
    basis: basisOf(known, tabled),
    span: columns ? spanOf(source, columns) : null,
  };
}
