const daysIn = (year: number, month: number): number => new Date(Date.UTC(year, month, 0)).getUTCDate();

/** True for a date that the calendar has. */
export function isDate(text: string): boolean {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number);
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
}

/** True for a time of day. */
export function isTime(text: string): boolean {
  const [hours = 99, minutes = 99, seconds = 0] = text.split(':').map(Number);
  return hours < 24 && minutes < 60 && seconds < 60;
}

const two = (text: string | number): string => String(text).padStart(2, '0');

/** `2026-5-4` as `2026-05-04`. */
export const paddedDate = (text: string): string => {
  const [year = '', month = '', day = ''] = text.replace(/t$/i, '').split('-');
  return `${year}-${two(month)}-${two(day)}`;
};

/** `7:05` as `07:05`. */
export const paddedTime = (text: string): string => {
  const [hours = '', ...rest] = text.split(':');
  return [two(hours), ...rest].join(':');
};

/** Every date that `5/7/26` could be, month first, day first and year first; the impossible ones left out. */
export function slashDateReadings(text: string): string[] {
  const [a = '', b = '', c = ''] = text.split('/');
  const year = (each: string): string => (each.length === 2 ? `20${each}` : each);
  const candidates =
    a.length === 4
      ? [`${a}-${two(b)}-${two(c)}`]
      : [`${year(c)}-${two(a)}-${two(b)}`, `${year(c)}-${two(b)}-${two(a)}`];
  return [...new Set(candidates)].filter((each) => /^\d{4}-\d{2}-\d{2}$/.test(each) && isDate(each));
}
