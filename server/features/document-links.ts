import * as l10n from '@vscode/l10n';
import { type Span, spanAt } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { packNamed } from '../packs/index.ts';
import { ruleById } from './rules.ts';

/** A stretch that leads elsewhere: to a file beside the log, to a rule pack, or to what is said of a rule. */
export interface Link {
  readonly span: Span;
  readonly to: 'file' | 'pack' | 'rule';
  /** A path as it is written, or an id. */
  readonly name: string;
  readonly tooltip: string;
}

/** A path that stays among the files beside the log: no scheme, no root, nothing odd. */
const isPath = (text: string, before: string): boolean =>
  text !== '' && /^\s?$/.test(before) && !/^[\\/]|^[a-z][a-z+.-]*:|[\p{Cc}<>"|?*]/iu.test(text);

function photoLinks(line: Line, number: number): readonly Link[] {
  return line.items.flatMap(({ slot, value }) =>
    slot === 'file' && value.kind === 'text' && isPath(value.text, line.text.charAt(value.start - 1))
      ? [{ span: spanAt(number, value), to: 'file' as const, name: value.text, tooltip: l10n.t('Open the picture') }]
      : [],
  );
}

const allowLinks = (line: Line, number: number): readonly Link[] =>
  (line.allow?.rules ?? []).flatMap((rule) =>
    ruleById(rule.id) === undefined
      ? []
      : [
          {
            span: spanAt(number, rule),
            to: 'rule' as const,
            name: rule.id,
            tooltip: l10n.t('Read what the rule says'),
          },
        ],
  );

const packLinks = ({ log, ownPacks }: Snapshot): readonly Link[] =>
  log.packs.flatMap(({ text, span }) => {
    const pack = packNamed(text, ownPacks.packs);
    return pack === undefined
      ? []
      : [{ span, to: 'pack' as const, name: pack.id, tooltip: l10n.t('Read what the pack asks') }];
  });

/** What leads out of a log. */
export function documentLinks(snapshot: Snapshot): readonly Link[] {
  const ofLines = snapshot.tree.lines.flatMap((line, number) => {
    if (line.row === 'photo') return [...photoLinks(line, number), ...allowLinks(line, number)];
    return line.allow === null ? [] : allowLinks(line, number);
  });
  return [...ofLines, ...packLinks(snapshot)];
}
