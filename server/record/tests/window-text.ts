import { formatNumber, significant } from '../format-number.ts';

/** A time in s as it is shown: `30 s`, `10 min`, `24 h`. */
export function timeText(seconds: number): string {
  if (seconds < 60) return `${plain(seconds)} s`;
  return seconds < 7200 ? `${plain(seconds / 60)} min` : `${plain(seconds / 3600)} h`;
}

const plain = (number: number): string => {
  const text = formatNumber(number, significant(3));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

/** A stretch of time: `1 min – 10 min`. */
export const windowText = (from: number, to: number): string => `${timeText(from)} – ${timeText(to)}`;
