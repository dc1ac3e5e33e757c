import { node, type XmlNode } from './node.ts';

/* Units by their codes in UCUM, with how many go into one SI unit. */
const units = { m: 1, mm: 1000, 'L/s': 1000 } as const;

export type GwmlUnit = keyof typeof units;

/** Twelve digits, so that 0.3 m stays 0.3. */
const numberText = (value: number): string => String(Number(value.toPrecision(12)) + 0);

const quantity = (unit: GwmlUnit, value: number): XmlNode =>
  node('swe:Quantity', {}, node('swe:uom', { code: unit }), node('swe:value', {}, numberText(value * units[unit])));

/** A property with a quantity given in SI, or null where it is not known. */
export const quantityNode = (name: string, unit: GwmlUnit, value: number | null | undefined): XmlNode | null =>
  value === null || value === undefined || !Number.isFinite(value) ? null : node(name, {}, quantity(unit, value));
