const widths = [32, 12, 12, 26, 12, 12] as const;

/** Prints one row of the table. */
export const row = (...cells: readonly string[]): void =>
  console.log(
    widths
      .map((width, at) => (at === 0 ? (cells[at] ?? '').padEnd(width) : (cells[at] ?? '').padStart(width)))
      .join(' '),
  );

export const rule = (): void => console.log('─'.repeat(widths.reduce((sum, width) => sum + width + 1, -1)));

/** Three figures, as many as a busy machine bears out. */
export const number = (value: number): string => String(Number(value.toPrecision(3)));

/** A ratio, with its aim and whether it is reached. */
export const againstAim = (ratio: number, aim: number | null): string =>
  aim === null ? number(ratio) : `${number(ratio)} (aim ${number(aim)}: ${ratio <= aim ? 'yes' : 'no'})`;
