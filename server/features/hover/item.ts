import type { Moment, Period, Value } from '../../../grammar/tree.ts';
import { exact } from '../../../grammar/units.ts';
import { bodyRowOf } from '../amounts.ts';
import { numberText } from '../display.ts';
import { escapeMarkdown, lines } from '../markdown.ts';
import { touches } from '../position.ts';
import type { HoverSource } from './source.ts';

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October'],
  ...['November', 'December'],
];

/** Midnight of a date, in ms; null for one that no calendar has. */
function dayOf(date: string | null): number | null {
  const [year, month, day] = (date ?? '').split('-').map(Number);
  if (year === undefined || month === undefined || day === undefined) return null;
  const time = Date.UTC(year, month - 1, day);
  return new Date(time).getUTCDate() === day ? time : null;
}

function momentText({ date, time }: Moment): string | null {
  const day = dayOf(date);
  if (day === null) return time;
  const at = new Date(day);
  const words = `${weekdays[at.getUTCDay()]}, ${at.getUTCDate()} ${months[at.getUTCMonth()]} ${at.getUTCFullYear()}`;
  return time === null ? words : `${words}, ${time}`;
}

const minute = 60_000;

function instantOf({ date, time }: Moment): number | null {
  const day = dayOf(date);
  const [hours, minutes] = (time ?? '').split(':').map(Number);
  return day === null || hours === undefined || minutes === undefined ? null : day + (hours * 60 + minutes) * minute;
}

function durationText({ from, to }: Period): string | null {
  const [begun, ended] = [instantOf(from), instantOf({ ...to, date: to.date ?? from.date })];
  if (begun === null || ended === null || ended < begun) return null;
  const minutes = Math.round((ended - begun) / minute);
  return `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

/** Openings of sieves by number, mm: ASTM E11, from memory. */
const openings: Readonly<Record<number, number>> = {
  4: 4.75,
  6: 3.35,
  8: 2.36,
  10: 2,
  12: 1.7,
  14: 1.4,
  16: 1.18,
  18: 1,
  20: 0.85,
  25: 0.71,
  30: 0.6,
  35: 0.5,
  40: 0.425,
  45: 0.355,
  50: 0.3,
  60: 0.25,
  70: 0.212,
  80: 0.18,
  100: 0.15,
  120: 0.125,
  140: 0.106,
  200: 0.075,
};

const sieveText = (sieve: number): string => {
  const opening = openings[sieve];
  return opening === undefined ? `No. ${sieve}` : `No. ${sieve} (${opening} mm)`;
};

const slotText = (number: number): string =>
  `${numberText(number / 1000)} in = ${numberText(number * exact.inch)} mm: thousandths of an inch`;

/** What a value comes to that is no measure and no term; null where its words say all. */
function valueText(value: Value): string | null {
  switch (value.kind) {
    case 'moment':
      return momentText(value);
    case 'period':
      return [momentText(value.from), momentText(value.to), durationText(value)].filter(Boolean).join(' – ');
    case 'grading':
      return `passes sieve ${sieveText(value.coarse)}, held on ${sieveText(value.fine)}; openings of ASTM E11, from memory`;
    case 'hash-number':
      return slotText(value.number);
    default:
      return null;
  }
}

const told = new Set<Value['kind']>(['moment', 'period', 'grading', 'hash-number', 'text', 'unknown']);

/** A date, a time, a grading, a slot number, a name: what it stands for, and what it comes to. */
export const hoverItem: HoverSource = ({ line, at }) => {
  const item = line.items.find(({ value }) => told.has(value.kind) && touches(value, at.column));
  const slot = bodyRowOf(line)?.slots.find((each) => each.slot === item?.slot);
  if (item === undefined || slot === undefined) return null;
  const { start, end, kind } = item.value;
  const text = kind === 'unknown' ? 'not known: a question for the crew' : valueText(item.value);
  const markdown = lines([escapeMarkdown(slot.doc), text === null ? null : `**${escapeMarkdown(text)}**`]);
  return { start, end, markdown };
};
