import type { Tree } from '../../grammar/tree.ts';
import type { WellLog } from '../model/log.ts';
import type { Limits } from '../packs/limits.ts';
import { noOwnPacks } from '../packs/own-packs.ts';
import type { Record as WellRecord } from '../record/record.ts';
import type { Finding } from '../rules/rule.ts';
import { emptyRecord, failureOf, unknownLog } from './fallback.ts';
import type { Settings, Snapshot } from './snapshot.ts';
import type { Stages } from './stages.ts';

/** A computation done when it is first asked for. */
function once<T>(compute: () => T): () => T {
  let done: { readonly value: T } | null = null;
  return () => {
    done ??= { value: compute() };
    return done.value;
  };
}

export interface Parsed {
  readonly version: number;
  readonly lines: readonly string[];
  readonly tree: Tree;
  /** What went wrong before. */
  readonly failures: readonly Finding[];
}

const packsOf = (settings: Settings, log: WellLog): string[] => [
  ...settings.packs,
  ...log.packs.map(({ text }) => text),
];

/** One version of a document. What fails becomes a finding, and what needs it goes on with nothing. */
export function versionOf(stages: Stages, { version, lines, tree, failures }: Parsed, settings: Settings): Snapshot {
  const failed: Finding[] = [...failures];
  const guarded = <T>(stage: string, run: () => T, instead: () => T): (() => T) =>
    once(() => {
      try {
        return run();
      } catch (error) {
        failed.push(failureOf(stage, error));
        return instead();
      }
    });
  const ownPacks = settings.own ?? noOwnPacks;
  const log = guarded('reading the log', () => stages.build(tree), unknownLog);
  const limits = guarded(
    'finding the limits',
    (): Limits => stages.limits(packsOf(settings, log()), ownPacks),
    () => ({}),
  );
  const record = guarded(
    'computing the record',
    (): WellRecord => stages.record(log(), limits()),
    () => emptyRecord(log()),
  );
  const checked = guarded(
    'checking by the rules',
    () => stages.rules({ tree, log: log(), record, limits: limits() }, settings),
    (): readonly Finding[] => [],
  );
  const findings = once((): readonly Finding[] => {
    record();
    const found = checked();
    return failed.length === 0 ? found : [...failed, ...found];
  });
  return {
    version,
    lines,
    tree,
    ownPacks,
    get log() {
      return log();
    },
    get limits() {
      return limits();
    },
    get record() {
      return record();
    },
    get findings() {
      return findings();
    },
  };
}
