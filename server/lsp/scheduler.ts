/** How long a flood of changes may hold back a run, in milliseconds. */
const longestWait = 100;

/**
 * Runs a task for a key once the messages that wait in the queue are taken in: each message comes in a turn of its own,
 * so a key that was asked for again since the last turn waits one more. Nothing is timed, save the longest wait.
 */
export class Scheduler {
  readonly #asked = new Map<string, { count: number; since: number }>();
  readonly #task: (key: string) => void;

  constructor(task: (key: string) => void) {
    this.#task = task;
  }

  /** Asks for a run; asked for again before it has come, there is still one. */
  ask(key: string): void {
    const waiting = this.#asked.get(key);
    if (waiting !== undefined) {
      waiting.count += 1;
      return;
    }
    this.#asked.set(key, { count: 1, since: Date.now() });
    this.#wait(key, 0);
  }

  /** Takes back what was asked for. */
  drop(key: string): void {
    this.#asked.delete(key);
  }

  #wait(key: string, seen: number): void {
    setImmediate(() => {
      const waiting = this.#asked.get(key);
      if (waiting === undefined) return;
      if (waiting.count > seen && Date.now() - waiting.since < longestWait) this.#wait(key, waiting.count);
      else this.#run(key);
    });
  }

  #run(key: string): void {
    this.#asked.delete(key);
    this.#task(key);
  }
}
