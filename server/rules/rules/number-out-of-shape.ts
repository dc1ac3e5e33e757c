import * as l10n from '@vscode/l10n';
import type { WellLog } from '../../model/log.ts';
import type { NumberShape } from '../../packs/limits.ts';
import { saidBy } from '../asked.ts';
import { examplePack } from '../example-pack.ts';
import { writeAfter } from '../fixes.ts';
import { shortened } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

const words: Readonly<Record<NumberShape['of'], (written: string, wanted: string, shape: string) => string>> = {
  tag: (written, wanted, shape) =>
    l10n.t('the tag "{0}" is not written as {1}, such as {2}; look at it again, or mark it ?', written, wanted, shape),
  permit: (written, wanted, shape) =>
    l10n.t(
      'the permit "{0}" is not written as {1}, such as {2}; look at it again, or mark it ?',
      written,
      wanted,
      shape,
    ),
  licence: (written, wanted, shape) =>
    l10n.t(
      'the licence "{0}" is not written as {1}, such as {2}; look at it again, or mark it ?',
      written,
      wanted,
      shape,
    ),
};

const kinds: Readonly<Record<string, RegExp>> = { A: /^\p{L}$/u, '9': /^\d$/ };

const bare = (text: string): string[] => [...text.replace(/\s+/g, '')];

/** True where a text is written as the shape says: letters for `A`, digits for `9`, all else as it stands. */
function isOfShape(text: string, shape: string): boolean {
  const [written, wanted] = [bare(text), bare(shape)];
  return (
    written.length === wanted.length &&
    wanted.every((each, at) => (kinds[each] ?? isAlike(each)).test(written[at] ?? ''))
  );
}

const isAlike = (wanted: string): Pick<RegExp, 'test'> => ({
  test: (character) => character.toLowerCase() === wanted.toLowerCase(),
});

function reportsOf(wanted: NumberShape, key: string, pack: string, { header }: WellLog): Report[] {
  const written = Object.hasOwn(header, wanted.of) ? header[wanted.of] : undefined;
  if (!written || written.text.includes('?') || isOfShape(written.text, wanted.shape)) return [];
  return [
    {
      span: written.span,
      fixes: () => [
        writeAfter(l10n.t('Mark it as doubtful, to look at it again'), written.span, ' ?', { preferred: true }),
      ],
      message: words[wanted.of](shortened(written.text), saidBy(wanted, pack), wanted.shape),
      limit: key,
    },
  ];
}

/** A tag, permit or licence that is not written as the pack says. */
export const rule: Rule = {
  id: 'number-out-of-shape',
  severity: 'warning',
  title: 'A tag, permit or licence that is not written as it should be',
  why: 'A number with a slip leads the office to another well, or to none.',
  mend: 'Look at the tag or the paper again. Where nobody can, a `?` keeps the question.',
  source: 'the pack’s shape of the number',
  crew: 'What is written on it?',
  flagged: [
    { text: 'rules fenmarrow-county\ntag [[F 2061]]', fixed: 'rules fenmarrow-county\ntag F 2061 ?', own: examplePack },
  ],
  silent: [
    { text: 'rules fenmarrow-county\ntag F20611', own: examplePack },
    { text: 'rules fenmarrow-county\ntag ?', own: examplePack },
    { text: 'tag F 2061' },
  ],
  check: ({ log, limits }) =>
    (limits.packs ?? []).flatMap(({ id, numbers }) =>
      numbers.flatMap((each, index) => reportsOf(each, `${id}/numbers/${index}`, id, log)),
    ),
};
