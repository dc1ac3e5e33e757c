import * as l10n from '@vscode/l10n';
import type { Item, Moment, Value } from '../../../grammar/tree.ts';
import { unitBySpelling } from '../../../grammar/units.ts';
import { unitText } from '../display.ts';
import { escapeMarkdown, lines } from '../markdown.ts';
import { touches } from '../position.ts';
import { momentText, periodText } from './dates.ts';
import { zoneText } from './plain-number.ts';
import { sieveText } from './sieves.ts';
import { slotWidthLine } from './slot-width.ts';
import { docOf } from './slots.ts';
import type { HoverPlace, HoverSource } from './source.ts';

const momentDoubt = ({ approximate, doubtful }: Moment): string | null => {
  const words = [approximate ? l10n.t('approximate') : null, doubtful ? l10n.t('to be confirmed') : null];
  const said = words.filter((word) => word !== null);
  return said.length === 0 ? null : l10n.t('Written as {0}.', said.join(', '));
};

const doubtOf = (value: Value): string | null => {
  if (value.kind === 'moment') return momentDoubt(value);
  return value.kind === 'period' ? (momentDoubt(value.from) ?? momentDoubt(value.to)) : null;
};

/** Where the clock of a reading stands since its test began, in minutes. */
function sinceStart({ snapshot: { log }, at }: HoverPlace): number | null {
  const phases = log.tests.flatMap((test) => [...test.phases, ...test.observed.flatMap((well) => well.phases)]);
  const reading = phases.flatMap(({ readings }) => readings).find(({ line }) => line === at.line);
  const seconds = reading?.elapsed?.value ?? null;
  return seconds === null ? null : seconds / 60;
}

/** A word of the `units` line: what is read in that unit. */
function unitWordText(word: string, { snapshot: { log } }: HoverPlace): string | null {
  const unit = unitBySpelling(word);
  if (unit === undefined) return null;
  const { depth, diameter, gallon } = log.units;
  if (unit.id === gallon) return l10n.t('A gallon is {0} L', unit.factor * 1000);
  if (unit.id === depth) return l10n.t('A bare depth is in {0}', unitText(unit.id));
  return unit.id === diameter ? l10n.t('A bare diameter is in {0}', unitText(unit.id)) : null;
}

function textNote({ slot }: Item, text: string, place: HoverPlace): string | null {
  if (slot === 'zone') return zoneText(text);
  return place.line.row === 'units' ? unitWordText(text, place) : null;
}

function clockText(value: Moment, { slot }: Item, place: HoverPlace): string | null {
  const minutes = slot === 'elapsed' ? sinceStart(place) : null;
  const moment = momentText(value);
  return minutes === null ? moment : l10n.t('{0}: {1} min after the start', moment ?? '', minutes);
}

/** What a value comes to that is no measure and no term; null where its words say all. */
function valueText(item: Item, place: HoverPlace): string | null {
  const { value } = item;
  switch (value.kind) {
    case 'moment':
      return clockText(value, item, place);
    case 'period':
      return periodText(value);
    case 'grading':
      return l10n.t(
        'passes sieve {0}, held on {1}; openings of ASTM E11, from memory',
        sieveText(value.coarse),
        sieveText(value.fine),
      );
    case 'unknown':
      return l10n.t('not known: a question for the crew');
    case 'text':
      return textNote(item, value.text, place);
    default:
      return null;
  }
}

const told = new Set<Value['kind']>(['moment', 'period', 'grading', 'hash-number', 'text', 'unknown']);

const isTold = ({ value }: Item, { line, at }: HoverPlace): boolean =>
  told.has(value.kind) && line.row !== 'note' && line.row !== 'rules' && touches(value, at.column);

/** A date, a time, a grading, a slot number, a name: what it stands for, and what it comes to. */
export const hoverItem: HoverSource = (place) => {
  const item = place.line.items.find((each) => isTold(each, place));
  if (item === undefined) return null;
  const { start, end, kind } = item.value;
  const text = valueText(item, place);
  const width = kind === 'hash-number' ? slotWidthLine(place) : null;
  const markdown = lines([
    escapeMarkdown(l10n.t(docOf(place.line, item))),
    text === null ? width : `**${escapeMarkdown(text)}**`,
    doubtOf(item.value),
  ]);
  return { start, end, markdown };
};
