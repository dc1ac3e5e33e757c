/* Wheels, flings and keys go on moving a page for a moment after the hand; longer than this, nothing of theirs does. */
const goesOnFor = 1000;

/** Whether a scroll of the page is the reader's, or comes of the text, the cursor or a redrawing. Times in ms. */
export class Lead {
  #until = Number.NEGATIVE_INFINITY;

  /** The reader turned the wheel, swept or pressed a key. */
  act(at: number): void {
    this.#until = Math.max(this.#until, at + goesOnFor);
  }

  /** The reader holds something, a scroll bar perhaps, which may stand still for as long as they like. */
  hold(): void {
    this.#until = Number.POSITIVE_INFINITY;
  }

  letGo(at: number): void {
    if (this.#until === Number.POSITIVE_INFINITY) this.#until = at + goesOnFor;
  }

  /** The text is scrolled: the page goes along, and leads no longer. */
  follow(): void {
    this.#until = Number.NEGATIVE_INFINITY;
  }

  /** True for a scroll that the reader makes; it goes on from there. */
  scrolls(at: number): boolean {
    if (at > this.#until) return false;
    this.act(at);
    return true;
  }
}
