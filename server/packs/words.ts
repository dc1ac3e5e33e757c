import type { When } from './when.ts';

const either = (ids: readonly string[]): string => ids.map((id) => id.replaceAll('-', ' ')).join(' or ');

const metres = (value: number): string => `${Number(value.toFixed(2))} m`;

const phrases: { readonly [K in keyof When]-?: (wanted: NonNullable<When[K]>) => string } = {
  rock: (kinds) => (kinds.includes('any') ? 'in rock' : `in ${either(kinds)}`),
  topOfRockAbove: (depth) => `top of rock above ${metres(depth)}`,
  use: (ids) => `use ${either(ids)}`,
  method: (ids) => `drilled by ${either(ids)}`,
  casing: (ids) => `casing of ${either(ids)}`,
  joint: (ids) => `joints ${either(ids)}`,
  fill: (ids) => `filled with ${either(ids)}`,
  placement: (ids) => `placed by ${either(ids)}`,
  bentonite: (has) => (has ? 'with bentonite' : 'without bentonite'),
  centralizers: (has) => (has ? 'with centralizers' : 'without centralizers'),
  clay: (has) => (has ? 'with clay' : 'without clay'),
  deeperThan: (depth) => `deeper than ${metres(depth)}`,
  widerThan: (diameter) => `wider than ${metres(diameter)}`,
  boreWiderThan: (diameter) => `wider inside than ${metres(diameter)}`,
  intoRockOver: (depth) => `more than ${metres(depth)} into rock`,
};

type Phrase = (wanted: unknown) => string;

/** The conditions of a case in words, such as `in limestone, top of rock above 6.1 m`. */
export const whenText = (when: When): string =>
  (Object.keys(when) as (keyof When)[])
    .filter((name) => when[name] !== undefined)
    .map((name) => (phrases[name] as Phrase)(when[name]))
    .join(', ');
