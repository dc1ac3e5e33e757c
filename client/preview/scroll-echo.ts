/* Lines that stick to the top of an editor stand over as many of the text. */
const sticking = 5;
/* Lenses above lines come and go, and push the text by as much. */
const pushed = 1;
/* What an editor does of itself when it is scrolled is over by then, in ms. */
const settles = 500;

/** Tells the scrolls of a text that was put somewhere from those that someone makes there. Lines from 0, times in ms. */
export class ScrollEcho {
  #put: { readonly line: number; readonly at: number } | null = null;
  #settledAt: number | null = null;

  /** The text is put to a line: it scrolls to there, or as near as it can. */
  put(line: number, at: number): void {
    this.#put = { line, at };
    this.#settledAt = null;
  }

  /** True where a text that now begins at `top` has but gone where it was put. */
  isEcho(top: number, at: number): boolean {
    if (this.#put === null) return false;
    if (at - this.#put.at <= settles) this.#settledAt = top;
    else if (!this.#isWhereItWasPut(top, this.#put.line)) this.#put = null;
    return this.#put !== null;
  }

  /* A slow editor may go there late, and then has not been seen to settle. */
  #isWhereItWasPut(top: number, line: number): boolean {
    if (this.#settledAt !== null) return Math.abs(top - this.#settledAt) <= pushed;
    return top <= line + pushed && top >= line - sticking;
  }
}
