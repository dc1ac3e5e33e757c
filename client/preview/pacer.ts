/**
 * Runs a task at most once in a stretch of milliseconds, never twice at a time, and always once after the last ask.
 * The task may not reject.
 */
export class Pacer {
  readonly #stretch: number;
  readonly #task: () => Promise<void>;
  #timer: NodeJS.Timeout | null = null;
  #isRunning = false;
  #wasAskedMeanwhile = false;

  constructor(stretch: number, task: () => Promise<void>) {
    this.#stretch = stretch;
    this.#task = task;
  }

  ask(): void {
    if (this.#isRunning) this.#wasAskedMeanwhile = true;
    else this.#timer ??= setTimeout(() => void this.#run(), this.#stretch);
  }

  stop(): void {
    if (this.#timer) clearTimeout(this.#timer);
    this.#timer = null;
    this.#wasAskedMeanwhile = false;
  }

  async #run(): Promise<void> {
    this.#timer = null;
    this.#isRunning = true;
    await this.#task();
    this.#isRunning = false;
    if (!this.#wasAskedMeanwhile) return;
    this.#wasAskedMeanwhile = false;
    this.ask();
  }
}
