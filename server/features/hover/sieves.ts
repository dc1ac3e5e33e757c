/** Openings of sieves by number, mm: ASTM E11, from memory. */
const openings: Readonly<Record<number, number>> = {
  4: 4.75,
  6: 3.35,
  8: 2.36,
  10: 2,
  12: 1.7,
  14: 1.4,
  16: 1.18,
  18: 1,
  20: 0.85,
  25: 0.71,
  30: 0.6,
  35: 0.5,
  40: 0.425,
  45: 0.355,
  50: 0.3,
  60: 0.25,
  70: 0.212,
  80: 0.18,
  100: 0.15,
  120: 0.125,
  140: 0.106,
  200: 0.075,
};

/** A sieve by its number and its opening. */
export function sieveText(sieve: number): string {
  const opening = openings[sieve];
  return opening === undefined ? `No. ${sieve}` : `No. ${sieve} (${opening} mm)`;
}
