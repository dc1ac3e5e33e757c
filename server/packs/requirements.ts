import * as z from 'zod';
import { clause } from './clause.ts';

/** Facts that a record may have to hold. */
export const recordFacts = [
  'well',
  'owner',
  'place',
  'place-in-degrees',
  'contractor',
  'technician',
  'licence',
  'tag',
  'permit',
  'use',
  'began',
  'finished',
  'hole',
  'strata',
  'casing',
  'seal',
  'water-level',
  'test',
  'disinfection',
  'pump',
] as const;
export type RecordFact = (typeof recordFacts)[number];

/** One fact that a record must hold. */
export const Requirement = z.strictObject({ fact: z.enum(recordFacts), ...clause });
export type Requirement = z.infer<typeof Requirement>;
