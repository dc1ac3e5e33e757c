import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Pacer } from '../../client/preview/pacer.ts';

beforeEach(() => {
  vi.useFakeTimers();
});

afterEach(() => {
  vi.useRealTimers();
});

/** A task that counts its runs and lasts as long as it is told to. */
function countedTask(lasting: number) {
  const runs = { begun: 0, atOnce: 0, mostAtOnce: 0 };
  const task = async (): Promise<void> => {
    runs.begun++;
    runs.mostAtOnce = Math.max(runs.mostAtOnce, ++runs.atOnce);
    await new Promise((resolve) => setTimeout(resolve, lasting));
    runs.atOnce--;
  };
  return { runs, task };
}

test('many asks in one stretch run the task once, at its end', async () => {
  const { runs, task } = countedTask(0);
  const pacer = new Pacer(150, task);
  for (let ask = 0; ask < 20; ask++) pacer.ask();
  await vi.advanceTimersByTimeAsync(149);
  expect(runs.begun).toBe(0);
  await vi.advanceTimersByTimeAsync(1000);
  expect(runs.begun).toBe(1);
});

test('asking without a pause does not put the task off for ever', async () => {
  const { runs, task } = countedTask(0);
  const pacer = new Pacer(150, task);
  for (let elapsed = 0; elapsed < 1500; elapsed += 50) {
    pacer.ask();
    await vi.advanceTimersByTimeAsync(50);
  }
  expect(runs.begun).toBeGreaterThanOrEqual(7);
});

test('a slow task never runs twice at a time, and runs once more for what was asked meanwhile', async () => {
  const { runs, task } = countedTask(400);
  const pacer = new Pacer(100, task);
  pacer.ask();
  await vi.advanceTimersByTimeAsync(200);
  pacer.ask();
  pacer.ask();
  await vi.advanceTimersByTimeAsync(5000);
  expect(runs).toEqual({ begun: 2, atOnce: 0, mostAtOnce: 1 });
});

test('after it is stopped nothing runs', async () => {
  const { runs, task } = countedTask(0);
  const pacer = new Pacer(100, task);
  pacer.ask();
  pacer.stop();
  await vi.advanceTimersByTimeAsync(1000);
  expect(runs.begun).toBe(0);
});
