/* Metres in one of each unit of length; exact, NIST SP 811 (2008), appendix B. */
const metres: Readonly<{ [unit: string]: number }> = { m: 1, cm: 0.01, mm: 0.001, ft: 0.3048, in: 0.0254 };

/** Metres in one of the unit; a unit that is no length counts as the metre. */
export const metresIn = (unit: string): number => (Object.hasOwn(metres, unit) ? metres[unit] : undefined) ?? 1;

/** Metres, in the unit. */
export const inUnit = (value: number, unit: string): number => value / metresIn(unit);
