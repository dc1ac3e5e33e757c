import type { Reading, Test, WellLog } from '../model/log.ts';

/** Ways to test a well that are no test of its yield over time. */
const shortByNature = new Set(['slug', 'packer-test', 'estimated']);

export const isYieldTest = ({ method }: Test): boolean => method === null || !shortByNature.has(method.id);

/** The readings taken while water was drawn. */
export const pumpingReadings = ({ phases }: Test): Reading[] =>
  phases.filter(({ kind }) => kind === 'pumping').flatMap(({ readings }) => readings);

/** Seconds for which water was drawn: as written, else up to the last reading; null where neither is known. */
export function timePumped(test: Test): number | null {
  const times = pumpingReadings(test).flatMap(({ elapsed }) => elapsed?.value ?? []);
  return test.duration?.value ?? (times.length > 0 ? Math.max(...times) : null);
}

/** The test of the yield that ran longest; null where there is none. */
export const longestTest = ({ tests }: WellLog): Test | null =>
  tests
    .filter(isYieldTest)
    .reduce<Test | null>(
      (longest, each) => (longest && (timePumped(longest) ?? 0) >= (timePumped(each) ?? 0) ? longest : each),
      null,
    );
