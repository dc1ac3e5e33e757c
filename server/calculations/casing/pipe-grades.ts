import { PSI } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'least yield strength of a grade of steel pipe',
  text: 'by standard and grade; of a standard without its grade, the lowest of its grades; of a grade without its standard, that grade of ASTM A53 or API',
  source: 'ASTM A53, A106, A139, A252, A500, A589; API 5L, API 5CT; all from memory',
  range: 'the grades in the table',
  caution: null,
};

/** A grade as the standards name it, and its least yield strength, Pa. */
export interface PipeGrade {
  readonly name: string;
  readonly yieldStrength: number;
}

interface Standard {
  readonly name: string;
  /** Least yield strength of each grade, psi; the lowest grade first. */
  readonly grades: Readonly<Record<string, number>>;
}

const STANDARDS: readonly Standard[] = [
  { name: 'ASTM A53', grades: { A: 30_000, B: 35_000 } },
  { name: 'ASTM A106', grades: { A: 30_000, B: 35_000, C: 40_000 } },
  { name: 'ASTM A139', grades: { A: 30_000, B: 35_000, C: 42_000, D: 46_000, E: 52_000 } },
  { name: 'ASTM A252', grades: { '1': 30_000, '2': 35_000, '3': 45_000 } },
  { name: 'ASTM A500', grades: { A: 33_000, D: 36_000, B: 42_000, C: 46_000 } },
  { name: 'ASTM A589', grades: { A: 30_000, B: 35_000 } },
  {
    name: 'API 5L',
    grades: {
      A25: 25_000,
      A: 30_000,
      B: 35_000,
      X42: 42_000,
      X46: 46_000,
      X52: 52_000,
      X56: 56_000,
      X60: 60_000,
      X65: 65_000,
      X70: 70_000,
    },
  },
  {
    name: 'API 5CT',
    grades: {
      H40: 40_000,
      J55: 55_000,
      K55: 55_000,
      N80: 80_000,
      L80: 80_000,
      C90: 90_000,
      T95: 95_000,
      P110: 110_000,
    },
  },
];

/** Words that stand round a grade and say nothing of it. */
const IDLE = /\b(?:ASTM|ASME|API|SPEC|GRADE|GR|STEEL|CASING|PIPE|ERW|SEAMLESS|SMLS|WELDED)\b/g;

const LEADING_STANDARD = /^(5L|5CT|SA?\d{2,3}|A\d{2,3})(?=\s|$)/;

/**
 * The grade that a text names, with its least yield strength, Pa. Case, hyphens, points and the words about it do not
 * matter: `A53 B`, `ASTM A-53 gr. B`, `grade B`, `API 5L X42`, `J55`.
 *
 * Source: the standards named above, from memory. Worked example: `A53 gr. B`: 35,000 psi = 241.3 MPa; `API 5L X42`: 42,000.
 */
export function pipeGrade(text: string): Outcome<PipeGrade> {
  const words = plainWords(text);
  const standard = LEADING_STANDARD.exec(words)?.[1] ?? null;
  const grade = words.slice(standard?.length ?? 0).trim();
  const candidates = standard === null ? STANDARDS : STANDARDS.filter(({ name }) => name.endsWith(` ${asA(standard)}`));
  for (const each of candidates) {
    const found = gradeOf(each, grade, standard !== null);
    if (found) return known(found);
  }
  return refused('that grade is not in the table');
}

/** `ASTM A-53, Gr. B` as `A53 B`, `X-42` as `X42`, `J 55` as `J55`. */
const plainWords = (text: string): string =>
  text
    .toUpperCase()
    .replace(/[.,/()]/g, ' ')
    .replace(IDLE, ' ')
    .replace(/\b([A-Z]{1,2})[-\s](?=\d)/g, '$1')
    .replace(/-/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^(S?A\d{2,3})(?=[A-Z])/, '$1 ');

/** ASME calls A53 SA53. */
const asA = (standard: string): string => standard.replace(/^SA/, 'A');

function gradeOf({ name, grades }: Standard, grade: string, standardWritten: boolean): PipeGrade | null {
  const strengths = new Map(Object.entries(grades));
  if (grade === '' && standardWritten) {
    return { name: `${name}, the lowest grade`, yieldStrength: Math.min(...strengths.values()) * PSI };
  }
  const strength = strengths.get(grade);
  return strength === undefined ? null : { name: `${name} ${grade}`, yieldStrength: strength * PSI };
}
