import type { TermValue, Value } from '../../grammar/tree.ts';
import type { TextField, Word } from './log.ts';
import { itemIn, type Source, spanOf, valuesIn, writtenAt } from './source.ts';

export const wordOf = (source: Source, value: TermValue): Word => ({
  list: value.list,
  id: value.term.id,
  name: value.term.name,
  written: writtenAt(source, value),
  span: spanOf(source, value),
});

/** The term in a slot; null where there is none, or a `?`. */
export function wordIn(source: Source, slot: string): Word | null {
  const value = itemIn(source, slot)?.value;
  return value?.kind === 'term' ? wordOf(source, value) : null;
}

/** Every term in a slot. */
export function wordsIn(source: Source, slot: string): Word[] {
  const words: Word[] = [];
  for (const value of valuesIn(source, slot)) if (value.kind === 'term') words.push(wordOf(source, value));
  return words;
}

/** A value kept as text; a lone `?` is the text `?`. */
export function textOf(source: Source, value: Value): TextField | null {
  if (value.kind !== 'text' && value.kind !== 'unknown') return null;
  const text = value.kind === 'text' ? value.text : '?';
  return { text, span: spanOf(source, value) };
}

/** The text in a slot. */
export function textIn(source: Source, slot: string): TextField | null {
  const item = itemIn(source, slot);
  return item ? textOf(source, item.value) : null;
}

/** A value that is a term, or else kept as text. */
export const wordOrText = (source: Source, value: Value): Word | TextField | null =>
  value.kind === 'term' ? wordOf(source, value) : textOf(source, value);
