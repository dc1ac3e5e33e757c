/** Standard acceleration of free fall, m/s² (NIST SP 811, exact). */
export const STANDARD_GRAVITY = 9.80665;

/** Density of fresh cold water as the trade rounds it, kg/m³. At 4 °C it is 999.97 (CRC Handbook, from memory). */
export const WATER_DENSITY = 1000;

/** Density of carbon steel, kg/m³, the value behind 0.02466 (D - t) t (ASME B36.10M, from memory). */
export const STEEL_DENSITY = 7850;

/** Relative density of portland cement (American Petroleum Institute and ACI absolute-volume practice). */
export const CEMENT_RELATIVE_DENSITY = 3.15;

/** Relative density of portland-limestone cement, about, from memory. */
export const LIMESTONE_CEMENT_RELATIVE_DENSITY = 3.1;

/** Relative density of the solids of bentonite, about, from memory (2.4 to 2.7 by the maker). */
export const BENTONITE_RELATIVE_DENSITY = 2.6;

/** International foot, metres; international inch, metres (NIST SP 811, exact). */
export const FOOT = 0.3048;
export const INCH = 0.0254;

/** US gallon, m³; pound, kg; pound-force per square inch, Pa (NIST SP 811). */
export const US_GALLON = 0.003785411784;
export const POUND = 0.45359237;
export const PSI = (POUND * STANDARD_GRAVITY) / INCH ** 2;

/** Mass of one US sack of portland cement, kg: 94 lb (ASTM C150, from memory). */
export const CEMENT_SACK = 94 * POUND;
