/** Something `height` high that would like its top at `at`. */
export interface Wish {
  readonly at: number;
  readonly height: number;
}

interface Block {
  sum: number;
  count: number;
}

const meanOf = (block: Block): number => block.sum / block.count;

function pooled(offsets: readonly number[]): number[] {
  const blocks: Block[] = [];
  for (const offset of offsets) {
    let last: Block = { sum: offset, count: 1 };
    for (let before = blocks.at(-1); before && meanOf(before) > meanOf(last); before = blocks.at(-1)) {
      last = { sum: before.sum + last.sum, count: before.count + last.count };
      blocks.pop();
    }
    blocks.push(last);
  }
  return blocks.flatMap((block) => Array<number>(block.count).fill(meanOf(block)));
}

/**
 * Tops for things in the order given, so that none overlaps the next, all lie between `top` and `bottom`, and the squared
 * distances from where they would like to be are least (isotonic regression by pooling of neighbours that violate the
 * order). Where they need more room than there is, they run past `bottom`.
 */
export function spread(wishes: readonly Wish[], top: number, bottom: number): number[] {
  const starts: number[] = [];
  let used = 0;
  for (const wish of wishes) {
    starts.push(used);
    used += wish.height;
  }
  const room = Math.max(top, bottom - used);
  const offsets = pooled(wishes.map((wish, n) => wish.at - (starts[n] ?? 0)));
  return offsets.map((offset, n) => Math.min(Math.max(offset, top), room) + (starts[n] ?? 0));
}
