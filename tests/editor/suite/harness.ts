import { setTimeout as pause } from 'node:timers/promises';

/** Named tests, run in the order in which they are written. */
export type Tests = Readonly<Record<string, () => Promise<void>>>;

/** The same tests, the first of which begins by setting something up for all of them. */
export const settingUp = (setUp: () => Promise<void>, tests: Tests): Tests =>
  Object.fromEntries(
    Object.entries(tests).map(([name, test], at) => [
      name,
      async () => {
        if (at === 0) await setUp();
        await test();
      },
    ]),
  );

type Answer<T> = T | null | undefined | false;

/** Asks again and again until the answer is neither null, undefined nor false. Rejects after `patience` milliseconds. */
export async function until<T>(
  what: string,
  ask: () => Answer<T> | PromiseLike<Answer<T>>,
  patience = 15_000,
): Promise<T> {
  const end = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (answer !== null && answer !== undefined && answer !== false) return answer;
    if (Date.now() > end) throw new Error(`waited ${patience} ms in vain for: ${what}`);
    await pause(50);
  }
}

async function passes(name: string, test: () => Promise<void>): Promise<boolean> {
  try {
    await test();
    console.log(`ok - ${name}`);
    return true;
  } catch (error) {
    console.error(`not ok - ${name}\n  ${error instanceof Error ? error.stack?.split('\n    at ')[0] : String(error)}`);
    return false;
  }
}

/** Runs the tests one after the other and prints the closing line. Rejects if one failed. */
export async function runTests(suites: readonly Tests[]): Promise<void> {
  let passed = 0;
  let failed = 0;
  for (const [name, test] of suites.flatMap((suite) => Object.entries(suite))) {
    if (await passes(name, test)) passed++;
    else failed++;
  }
  console.log(`${passed} passed, ${failed} failed`);
  if (failed > 0) throw new Error(`${failed} failed`);
}
