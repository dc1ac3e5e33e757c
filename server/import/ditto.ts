import * as l10n from '@vscode/l10n';
import { type Described, describe, remarkOf } from './describe.ts';

const mark =
  /^(?:"(?=$|[\s,.;:-])|''|,,|-+ ?" ?-+|(?:do|dto|ditto)\b\.?|(?:the )?same(?: as (?:above|before|last))?\b|as (?:above|before)\b|above(?=$|[ ,])|" ")[\s,.:;-]*(?:but |except |plus |and )?(.*)$/i;

/** What follows a ditto mark, or null where the words begin with none. */
export const afterDitto = (words: string): string | null => mark.exec(words.trim())?.[1]?.trim() ?? null;

const listsIn = ({ value }: Described): Set<string> =>
  new Set([
    ...(value?.description.qualities.map(({ list }) => list as string) ?? []),
    ...(value !== null && value.description.colours.length > 0 ? ['colour'] : []),
    ...(value?.description.materials.some(({ amount }) => amount === null) ? ['material'] : []),
  ]);

const withoutColours = (text: string, { value }: Described): string =>
  (value?.description.colours ?? []).reduce(
    (rest, { text: colour }) => rest.replace(`, ${colour}`, '').replace(`${colour} `, ''),
    text,
  );

/** The layer above again, with what the notes change of it. A change that speaks against it is told in the remark. */
export function repeated(above: Described | null, change: string): Described {
  if (above === null || above.text === '?')
    return {
      text: '?',
      remark: change === '' ? null : remarkOf(change),
      why: [l10n.t('a ditto with nothing above it')],
      value: null,
    };
  if (change === '') return { ...above, remark: null, why: above.why };
  const changed = describe(change);
  const inBoth = [...listsIn(changed)].filter((list) => listsIn(above).has(list));
  const base = inBoth.includes('colour') ? withoutColours(above.text, above) : above.text;
  const joined = changed.value === null ? above : describe(`${base}, ${change}`);
  if (inBoth.length === 0 && changed.value !== null && joined.value !== null && joined.remark === null) return joined;
  return {
    ...joined,
    remark: remarkOf(`as above, ${change}`),
    why: [...joined.why, l10n.t('which words of the layer above still hold is for you to say')],
  };
}
