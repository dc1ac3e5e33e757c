import * as l10n from '@vscode/l10n';
import type { DescriptionValue } from '../../grammar/tree.ts';
import { valueText } from '../../grammar/write.ts';
import { faultsOf, readIn } from './check.ts';

/** A description in the notation's long form, and what of it is in doubt. */
export interface Described {
  /** `?` where nothing was to be read. */
  readonly text: string;
  readonly remark: string | null;
  readonly why: readonly string[];
  /** The materials, qualities and colours, for a ditto that changes some of them. */
  readonly value: DescriptionValue | null;
}

const unread = (remark: string | null, why: string): Described => ({ text: '?', remark, why: [why], value: null });

/** Words that the notation would read as something else than a word of the description. */
const foreign = /[^\p{L}\s,.'()&/+-]|\bat\b|\bw\/c\b|\bno\.|\b\d/iu;

/** A remark as one line may hold it. */
export const remarkOf = (words: string): string => words.replace(/[#;]/g, ',').replace(/\s+/g, ' ').trim();

function read(words: string): Described | null {
  const text = `0 - 1 ${words}`;
  const line = readIn('strata', text);
  const value = line.items.find(({ slot }) => slot === 'description')?.value;
  if (faultsOf(line).length > 0 || value?.kind !== 'description') return null;
  const unknown = value.description.unknown.map((each) => each.text);
  const why =
    unknown.length === 0
      ? []
      : [l10n.t('kept as written, no list has {0}', unknown.map((each) => `"${each}"`).join(', '))];
  const others = line.items.filter(({ slot }) => slot !== 'description');
  if (others.length > 0) return null;
  return { text: valueText(value, text), remark: null, why, value };
}

/** The parts of a description that are read alone, the rest of it left to the remark. */
function readInPart(words: string): Described | null {
  const parts = words.split(/[,;:()"]| - /).map((part) => part.trim());
  const plain = parts.filter((part) => part !== '' && !foreign.test(part));
  const found = plain.length === 0 ? null : read(plain.join(', '));
  if (found?.value == null || found.value.description.principal === null) return null;
  return found;
}

function describeAfresh(words: string): Described {
  const plain = words
    .replace(/["']/g, '')
    .replace(/ ?[:;|]+ ?/g, ', ')
    .replace(/[,. ]+$/, '')
    .trim();
  if (plain === '' || plain === '?') return unread(null, l10n.t('the ground is not told'));
  const whole = foreign.test(plain) ? null : read(plain);
  if (whole !== null) return whole;
  const found = readInPart(words);
  const remark = remarkOf(words);
  if (found === null) return unread(remark, l10n.t('the notation would misread these words; they stand in the remark'));
  return {
    ...found,
    remark,
    why: [l10n.t('only a part of the words has its place on the line; the remark has all of them')],
  };
}

const mostKept = 10_000;
const kept = new Map<string, Described>();

/** What words say of the ground. Whatever the notation could misread is kept as the remark. The same words are read once. */
export function describe(words: string): Described {
  const known = kept.get(words);
  if (known !== undefined) return known;
  const described = describeAfresh(words);
  if (kept.size >= mostKept) kept.clear();
  kept.set(words, described);
  return described;
}

/** True where words name a material of the ground. */
export const isGround = (words: string): boolean => {
  const { value } = describe(words);
  return value !== null && value.description.principal !== null;
};
