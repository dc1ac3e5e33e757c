import type { PictureOrder } from '../webview/messages.ts';

export type Picture = Omit<PictureOrder, 'id'>;

/** How long a page may take to draw a picture, in ms. */
const patience = 20_000;

/** Pictures that the page of a preview is asked for, until they come. */
export class Pictures {
  readonly #awaited = new Map<number, (png: Uint8Array | null) => void>();
  #last = 0;

  constructor(private readonly order: (order: PictureOrder) => void) {}

  /** The picture as PNG; null where the page could not make it in time. */
  take(drawing: Picture): Promise<Uint8Array | null> {
    const id = ++this.#last;
    return new Promise((resolve) => {
      const timer = setTimeout(() => this.taken(id, null), patience);
      this.#awaited.set(id, (png) => {
        clearTimeout(timer);
        resolve(png);
      });
      this.order({ id, ...drawing });
    });
  }

  taken(id: number, png: Uint8Array | null): void {
    const give = this.#awaited.get(id);
    this.#awaited.delete(id);
    give?.(png);
  }

  dispose(): void {
    for (const id of [...this.#awaited.keys()]) this.taken(id, null);
  }
}
