import { nominalOfOutside } from '../../calculations/casing/pipe-sizes.ts';
import type { PipeString } from '../../model/log.ts';

const plastics = new Set(['pvc', 'cpvc', 'abs', 'hdpe', 'fibreglass', 'ptfe']);

/** Sizes written in millimetres are rounded: 168.3 mm stands for 6.625 in, 168.275 mm. */
const rounding = 0.0006;

/** Nominal diameter of a string in metres: as written, else of the tabled size with its outside diameter; else null. */
export function nominalDiameterOf({ size, material }: PipeString): number | null {
  if (size.nominal?.value != null) return size.nominal.value;
  if (size.outsideDiameter === null) return null;
  const table = plastics.has(material?.id ?? '') ? 'plastic' : 'steel';
  const tabled = nominalOfOutside(size.outsideDiameter, table, rounding);
  return tabled.ok ? tabled.value : null;
}
