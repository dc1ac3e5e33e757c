/** Openings in metres of the sieves by which packs are graded, by their numbers. Source: ASTM E11, from memory. */
const openings: Readonly<Record<number, number>> = {
  4: 4.75e-3,
  6: 3.35e-3,
  8: 2.36e-3,
  10: 2e-3,
  12: 1.7e-3,
  14: 1.4e-3,
  16: 1.18e-3,
  18: 1e-3,
  20: 0.85e-3,
  25: 0.71e-3,
  30: 0.6e-3,
  35: 0.5e-3,
  40: 0.425e-3,
  45: 0.355e-3,
  50: 0.3e-3,
  60: 0.25e-3,
  70: 0.212e-3,
  80: 0.18e-3,
  100: 0.15e-3,
  120: 0.125e-3,
  140: 0.106e-3,
  200: 0.075e-3,
};

/** Opening of a sieve in metres; null for a number that no sieve of the list has. */
export const sieveOpening = (number: number): number | null => openings[number] ?? null;
