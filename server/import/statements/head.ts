import * as l10n from '@vscode/l10n';
import { lookup } from '../../../grammar/terms/index.ts';
import { datesIn } from '../dates.ts';
import { line, nothing, type Outcome } from '../draft.ts';
import type { ReadOptions } from '../notes.ts';

interface Fact {
  readonly keyword: string;
  readonly label: RegExp;
  readonly takes: 'text' | 'date' | 'place' | 'ground' | 'use' | 'status';
  /** True where the label alone, without a colon, is enough. */
  readonly bare: boolean;
}

const fact = (keyword: string, label: string, takes: Fact['takes'] = 'text', bare = false): Fact => ({
  keyword,
  label: new RegExp(`^(?:${label})`, 'i'),
  takes,
  bare,
});

/** Facts of a form's head. Of two labels that fit, the first counts. */
const facts: readonly Fact[] = [
  fact('tag', String.raw`(?:well )?tag(?: ?(?:no\.?|number|id))?(?= ?[:=#-]| \d)`, 'text', true),
  fact('permit', String.raw`permit(?: ?(?:no\.?|number))?(?= ?[:=#-]| \d)`, 'text', true),
  fact(
    'licence',
    String.raw`(?:driller'?s? |contractor'?s? )?licen[cs]e(?: ?(?:no\.?|number))?(?= ?[:=#-]| \w*\d)`,
    'text',
    true,
  ),
  fact(
    'well',
    String.raw`well ?(?:no\.?|number|id|name)|well(?= ?[:=#])|(?:bore)?hole ?(?:no\.?|number|id|name)|bh ?(?:no\.?|id)`,
    'text',
    true,
  ),
  fact('contractor', String.raw`(?:drilling )?contractor|drilling (?:co|company|firm)\.?|drilled by`),
  fact('technician', `driller|technician|logged by|foreman`),
  fact('owner', `(?:well ?|land ?|property ?)?owner(?:'s name)?|client|customer`),
  fact('location', `location|legal(?: description)?|address`),
  fact('site', `site(?: name)?|project|job`),
  fact('use', `(?:proposed |intended |well )?use|purpose|use of well`, 'use'),
  fact('status', `(?:well )?status`, 'status'),
  fact('place', String.raw`lat(?:itude)? ?[/,&]? ?(?:long(?:itude)?|lon)\.?|coord(?:inate)?s|gps`, 'place', true),
  fact(
    'ground',
    String.raw`(?:ground |surface |land surface )?elev(?:ation)?\.?|ground level(?= ?[:=])`,
    'ground',
    true,
  ),
  fact(
    'began',
    `(?:date |drilling )?(?:started|began|begun|commenced|start)(?: date| drilling)?|start date`,
    'date',
    true,
  ),
  fact(
    'finished',
    `(?:date |drilling |well )?(?:completed|finished|complete|done)(?: date| drilling)?|completion date|date of completion`,
    'date',
    true,
  ),
  fact('reported', `(?:date )?reported|report date|date of report`, 'date', true),
];

const listed = (takes: 'use' | 'status', value: string): string | null => {
  const sense = lookup(value.replace(/[.,]$/, '')).find(({ list }) => list === takes);
  return sense?.term.name ?? null;
};

const open = (keyword: string, written: string): string =>
  l10n.t('"{0}" could be two days; which one is for you to say ({1} stays ?)', written, keyword);

function dateFact(keyword: string, value: string, options: ReadOptions): Outcome | null {
  const [date, second] = datesIn(value, options.dates);
  if (date === undefined) return null;
  const left = (value.slice(0, date.start) + value.slice(date.end)).replace(/[\s,.;:-]/g, '');
  const why = [
    ...(date.iso === null
      ? [date.ambiguous ? open(keyword, date.written) : l10n.t('"{0}" is no day of the calendar', date.written)]
      : []),
    ...(date.iso?.endsWith('?') ? [l10n.t('the century of "{0}" is not written; check it', date.written)] : []),
    ...(second !== undefined || left !== '' ? [l10n.t('only the date was taken')] : []),
  ];
  return {
    ...nothing,
    items: [line('head', `${keyword} ${date.iso ?? '?'}`)],
    why,
    openDate: date.ambiguous ? date.written : null,
  };
}

const degrees = /^(-?\d{1,3}\.\d+) ?°? ?([ns])?[ ,;/]+(-?\d{1,3}\.\d+) ?°? ?([ew])?$/i;

function placeText(value: string): string | null {
  const [, latitude, north, longitude, east] = degrees.exec(value) ?? [];
  if (latitude === undefined || longitude === undefined) return null;
  const signed = (figure: string, side: string | undefined) =>
    /[sw]/i.test(side ?? '') && !figure.startsWith('-') ? `-${figure}` : figure;
  return `place ${signed(latitude, north)} ${signed(longitude, east)}`;
}

const elevation = /^(-?\d+(?:\.\d+)?) ?(?:(m|met(?:re|er)s?)|(ft|feet|'))(?: (?:asl|amsl))?\.?$/i;

function groundText(value: string): string | null {
  const [, figure, metres, feet] = elevation.exec(value) ?? [];
  if (figure === undefined) return null;
  return `ground ${figure} ${feet === undefined && metres !== undefined ? 'm' : 'ft'}`;
}

function valueText({ keyword, takes }: Fact, value: string): string | null {
  if (takes === 'place') return placeText(value);
  if (takes === 'ground') return groundText(value);
  if (takes === 'use' || takes === 'status') {
    const term = listed(takes, value);
    return term === null ? null : `${keyword} ${term}`;
  }
  return `${keyword} ${value.replace(/(^|\s)#(?=\s*allow\b)/gi, '$1')}`;
}

/** A fact of the well's head, or null where the line is none. */
export function headFact(tidied: string, options: ReadOptions): Outcome | null {
  for (const each of facts) {
    const label = each.label.exec(tidied)?.[0];
    if (label === undefined) continue;
    const [mark] = /^ ?(?:[:=#]|-(?= ))[ :#=]*| /.exec(tidied.slice(label.length)) ?? [];
    if (mark === undefined || (mark.trim() === '' && !each.bare)) continue;
    const value = tidied.slice(label.length + mark.length).trim();
    if (value === '' || value === '?') return { ...nothing, items: [line('head', `${each.keyword} ?`)] };
    if (each.takes === 'date') {
      const outcome = dateFact(each.keyword, value, options);
      if (outcome !== null) return outcome;
      continue;
    }
    const text = valueText(each, value);
    if (text !== null) return { ...nothing, items: [line('head', text)] };
    if (mark.trim() !== '')
      return { ...nothing, why: [l10n.t('"{0}" is not what a {1} line takes', value, each.keyword)] };
  }
  return null;
}
