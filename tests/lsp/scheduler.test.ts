import { expect, test } from 'vitest';
import { Scheduler } from '../../server/lsp/scheduler.ts';

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

const turns = async (count: number): Promise<void> => {
  for (let at = 0; at < count; at += 1) await turn();
};

test('one run for what is asked for in turns that follow each other', async () => {
  const ran: string[] = [];
  const scheduler = new Scheduler((key) => ran.push(key));
  for (let at = 0; at < 5; at += 1) {
    scheduler.ask('a');
    await turn();
  }
  expect(ran).toEqual([]);
  await turns(3);
  expect(ran).toEqual(['a']);
});

test('a run for each key, and again when asked again', async () => {
  const ran: string[] = [];
  const scheduler = new Scheduler((key) => ran.push(key));
  scheduler.ask('a');
  scheduler.ask('b');
  await turns(3);
  scheduler.ask('a');
  await turns(3);
  expect(ran).toEqual(['a', 'b', 'a']);
});

test('what is taken back does not run', async () => {
  const ran: string[] = [];
  const scheduler = new Scheduler((key) => ran.push(key));
  scheduler.ask('a');
  scheduler.drop('a');
  await turns(3);
  expect(ran).toEqual([]);
});

test('a flood does not hold it back for ever', async () => {
  const ran: string[] = [];
  const scheduler = new Scheduler((key) => ran.push(key));
  const end = Date.now() + 400;
  while (Date.now() < end) {
    scheduler.ask('a');
    await turn();
  }
  expect(ran.length).toBeGreaterThan(0);
});
