import { pipeGrade } from '../../calculations/casing/pipe-grades.ts';
import { PSI } from '../../calculations/constants.ts';
import type { FileUnits, PipeString } from '../../model/log.ts';
import { nameOf } from '../geometry/strings.ts';
import { type Ingredient, worked } from '../ingredient.ts';

/** Yield strength, Pa, taken for steel whose grade nobody wrote: 35,000 psi, ASTM A53 grade B (from memory). */
const assumedYield = 35_000 * PSI;

/** Least yield strength of a steel string, Pa: of the grade written; assumed, and said so, where none is. */
export function yieldOf(string: PipeString, units: FileUnits): Ingredient {
  const written = string.grade;
  if (written === null) {
    const name = 'yield strength, assumed as of A53 grade B, for no grade is written';
    return worked(name, assumedYield, 'pressure', units);
  }
  const grade = pipeGrade(written.text);
  const name = `least yield strength, ${grade.ok ? grade.value.name : written.text}`;
  return worked(name, grade.ok ? grade.value.yieldStrength : null, 'pressure', units, {
    waitsFor: [`the yield strength of the grade of ${nameOf(string)}, which is not in the table`],
    line: written.span.line,
  });
}
