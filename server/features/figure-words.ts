import * as l10n from '@vscode/l10n';
import type { Figure } from '../record/record.ts';
import { figureTexts } from './figure-texts.ts';

/** A text with places for what varies, and how to find what stands there. */
interface Shape {
  readonly text: string;
  readonly pattern: RegExp;
}

const withoutMeaning = /[.*+?^$()[\]|\\]/g;

/** Placeholders are numbered in the order in which they stand. */
const shapeOf = (text: string): Shape => ({
  text,
  pattern: new RegExp(`^${text.replace(withoutMeaning, '\\$&').replace(/\{\d+\}/g, '(.+?)')}$`),
});

const varies = /\{\d+\}/;

const plainTexts: ReadonlySet<string> = new Set(figureTexts.filter((text) => !varies.test(text)));

const lettersOf = ({ text }: Shape): number => text.replace(/\{\d+\}/g, '').length;

/** Those that say more come first: `{0}, top` would take every text that ends so. */
const shapes: readonly Shape[] = figureTexts
  .filter((text) => varies.test(text))
  .map(shapeOf)
  .sort((a, b) => lettersOf(b) - lettersOf(a));

/** A text of the record in the language of the editor; what is none of its texts stays as it is. */
function worded(text: string): string {
  if (plainTexts.has(text)) return l10n.t(text);
  for (const shape of shapes) {
    const found = shape.pattern.exec(text);
    if (found !== null) return l10n.t(shape.text, ...found.slice(1).map(worded));
  }
  return text;
}

export const figureTitle = ({ title }: Figure): string => worded(title);

/** What a figure comes to, with its unit. */
export const figureText = ({ text }: Figure): string => ratedText(text);

/** The same in the other system of units; empty where there is none. */
export const figureOtherText = ({ otherText }: Figure): string => ratedText(otherText);

/** Units of which the name hangs on the language. */
const namedUnits = /(?:US|imp\.) g(?:al|pm)/;

/** `12 US gpm per ft`: units by their names, and a rate for each unit of something. */
function ratedText(text: string): string {
  const [rate = '', each] = text.replace(namedUnits, (unit) => l10n.t(unit)).split(' per ');
  return each === undefined ? rate : l10n.t('{0} per {1}', rate, each);
}

/** What a figure is to be used with care for; null where there is nothing. */
export const figureCaution = ({ caution }: Figure): string | null => (caution === null ? null : worded(caution));

/** The formula of a figure, its letters explained. */
export const figureFormula = ({ formula }: Figure): string => l10n.t(formula);

/** The facts that a figure waits for. */
export const factsAwaited = ({ waitsFor }: Figure): readonly string[] => waitsFor.map(worded);

/** What a number that went into a figure is. */
export const inputName = ({ name }: Figure['inputs'][number]): string => worded(name);
