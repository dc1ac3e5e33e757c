import { STEEL_DENSITY } from '../../calculations/constants.ts';
import type { PipeString } from '../../model/log.ts';

interface PipeDensity {
  /** kg/m3. */
  readonly density: number;
  readonly source: string;
}

const remembered = (density: number): PipeDensity => ({ density, source: 'handbooks, from memory' });

/** Densities of pipe by its material. */
const densities: Readonly<Record<string, PipeDensity>> = {
  steel: { density: STEEL_DENSITY, source: 'ASME B36.10M, from memory' },
  'galvanised-steel': { density: STEEL_DENSITY, source: 'ASME B36.10M, from memory' },
  'stainless-steel': remembered(8000),
  pvc: remembered(1400),
  cpvc: remembered(1550),
  abs: remembered(1050),
  hdpe: remembered(950),
};

/** Density of a string's material; null where the material is missing or has no tabled density. */
export const pipeDensityOf = ({ material }: PipeString): PipeDensity | null =>
  material ? (densities[material.id] ?? null) : null;

const steels = new Set(['steel', 'galvanised-steel']);

export const isSteel = ({ material }: PipeString): boolean => material !== null && steels.has(material.id);

export const isPvc = ({ material }: PipeString): boolean => material?.id === 'pvc';
