import * as l10n from '@vscode/l10n';
import type { Atom } from '../../../grammar/terms/atoms.ts';
import type { Line } from '../../../grammar/tree.ts';
import { escapeMarkdown } from '../markdown.ts';
import { touches } from '../position.ts';
import { termsOf } from '../words.ts';
import type { HoverSource } from './source.ts';
import { describeTerm } from './term.ts';

type Told = (text: string) => string | null;

function symbolText(text: string): string | null {
  const term = termsOf('class-symbol').find(({ id }) => id === text.toUpperCase());
  return term === undefined ? null : describeTerm('class-symbol', term);
}

const told: { readonly [K in Atom['kind']]?: Told } = {
  symbol: symbolText,
  name: (text) =>
    l10n.t('**{0}**: read as a name of a formation or a place, and kept as it is written', escapeMarkdown(text)),
  unknown: (text) =>
    l10n.t(
      '**{0}**: not a term known here; it is kept as it is written, and nothing is reckoned from it',
      escapeMarkdown(text),
    ),
};

/** The word of a description under the cursor that stands for no term of a list. */
function strangerAt(line: Line, column: number): Atom | undefined {
  const item = line.items.find(({ value }) => value.kind === 'description' && touches(value, column));
  if (item?.value.kind !== 'description') return undefined;
  return item.value.description.atoms.find((atom) => atom.mentions.length === 0 && touches(atom, column));
}

/** A word of a description that no list of terms knows, a name or a class symbol. */
export const hoverStranger: HoverSource = ({ line, at }) => {
  const word = strangerAt(line, at.column);
  const markdown = word === undefined ? null : (told[word.kind]?.(word.text) ?? null);
  return word === undefined || markdown === null ? null : { start: word.start, end: word.end, markdown };
};
