import { type DraftLayer, nothing, type Outcome } from '../draft.ts';
import type { Length } from '../lengths.ts';
import { after, before, lengthsOf, type Statement } from '../statement.ts';
import type { Token } from '../tokens.ts';

const lead =
  /^(?:(?:then|next|first|again|and|drilled|went|got|cut|dug|hit|struck|encountered|found|into|through|thru|more|now)\b[ ,]*)+(?:(?:through|thru|into|in)\b )?/i;

const edges = /^[\s:;,.=|/*-]+|[\s:;,=|/*-]+$|(?<=[a-z])\.$/gi;

/** The words of a description, without what stood around its depths. */
function descriptionWords(text: string): string {
  const words = text
    .replace(/^\s*(?:[:;,.=|/*-]\s*)+(?=\S)/, '')
    .replace(lead, '')
    .replace(edges, '')
    .replace(/^of /i, '')
    .replace(/\s*[([]\s*[)\]]\s*/g, ' ')
    .trim();
  const [, inside] = /^[([](.*)[)\]]$/.exec(words) ?? [];
  return (inside ?? words).trim();
}

const layer = (how: DraftLayer['how'], from: Length | null, to: Length | null, text: string): DraftLayer => ({
  kind: 'layer',
  how,
  from,
  to,
  words: descriptionWords(text),
  remark: null,
});

const outcome = (item: DraftLayer, depths: readonly Length[]): Outcome => ({ ...nothing, items: [item], depths });

const toWord = /(?:^|\s)(?:-|to|down to|until)\s?$/i;

/** The interval that a statement begins with, else the one that it ends with, else the first. */
function itsInterval({ text, tokens }: Statement): (Token & { readonly kind: 'interval' }) | null {
  const found = tokens.filter((token) => token.kind === 'interval');
  const [first] = found;
  const last = found.at(-1);
  if (first === undefined || last === undefined) return null;
  return first.start > 0 && /^[\s.)\]]*$/.test(text.slice(last.end)) ? last : first;
}

/** A layer with both its depths. Depths amid the words need words that name a material. */
function withInterval(statement: Statement, isGround: (words: string) => boolean): Outcome | null {
  const token = itsInterval(statement);
  if (token === null) return null;
  const { from, to } = token.interval;
  const isInside =
    before(statement, token).trim() !== '' &&
    after(statement, token)
      .replace(/^[)\].]+/, '')
      .trim() !== '';
  const ahead = before(statement, token).replace(/\b(?:from|at)? ?[([]?$/i, '');
  const behind = after(statement, token).replace(/^[)\]]/, '');
  const words = `${ahead} ${behind}`;
  if (isInside && !isGround(descriptionWords(words))) return null;
  return outcome(layer('interval', from, to, words), [from, to]);
}

/** A layer with one length, and what the length is as far as the words say it. */
function withLength(statement: Statement, isGround: (words: string) => boolean): Outcome | null {
  const [length] = lengthsOf(statement);
  if (length === undefined) return null;
  const ahead = before(statement, length);
  const behind = after(statement, length);
  if (toWord.test(ahead)) {
    const words = `${ahead.replace(toWord, ' ')} ${behind}`;
    return isGround(descriptionWords(words)) ? outcome(layer('to', null, length, words), [length]) : null;
  }
  const words = `${ahead} ${behind}`;
  if (/^ ?(?:of|thick\b)/i.test(behind)) {
    const thick = words.replace(/\bthick(?:ness)?\b/i, '').replace(/ of /i, ' ');
    return isGround(descriptionWords(thick)) ? outcome(layer('thick', null, length, thick), [length]) : null;
  }
  if (/(?:\bat|@|\bfrom|\bbelow)\s?$/i.test(ahead)) {
    const top = ahead.replace(/(?:\bat|@|\bfrom|\bbelow)\s?$/i, '') + behind;
    return isGround(descriptionWords(top)) ? outcome(layer('top', length, null, top), [length]) : null;
  }
  const isAtEdge = ahead.trim() === '' || behind.trim() === '' || /^[([]$/.test(ahead.trim().slice(-1));
  if (!isAtEdge || !isGround(descriptionWords(words))) return null;
  return outcome(layer('single', null, length, words), [length]);
}

/** A layer of the ground. `isGround` tells whether words name a material; it is asked only where the depths leave doubt. */
export const groundLayer = (statement: Statement, isGround: (words: string) => boolean): Outcome | null =>
  withInterval(statement, isGround) ?? withLength(statement, isGround);
