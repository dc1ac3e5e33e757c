import { parseLines, reparse, splitLines } from '../../grammar/index.ts';
import { analysisOf } from '../analysis/analysis.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { buildLog } from '../model/index.ts';
import { packs as ownPacks, packById, strictestOf } from '../packs/index.ts';
import type { Limits, Pack } from '../packs/limits.ts';
import { computeRecord } from '../record/index.ts';
import { ruleContext } from '../rules/context.ts';
import { runRules } from '../rules/engine.ts';

export interface EngineSettings {
  /** Packs to check against beside those that the file names. */
  readonly packs: readonly Pack[];
  readonly today: string;
}

/** The limits of the packs that a file names and of those asked for; of the first own pack where that makes none. */
function limitsOf(named: readonly string[], asked: readonly Pack[]): Limits {
  const chosen = [...asked, ...named.map(packById).filter((pack) => pack !== undefined)];
  return strictestOf(chosen.length > 0 ? chosen : ownPacks.slice(0, 1));
}

/** Everything that is known of a text. Never throws. */
export function analyseText(text: string, { packs, today }: EngineSettings): Snapshot {
  const { analyse } = analysisOf({
    parse: parseLines,
    reparse,
    build: buildLog,
    limits: (named) => limitsOf(named, packs),
    record: computeRecord,
    rules: (known, settings) => runRules(ruleContext({ ...known, today: settings.today }), settings),
  });
  return analyse(splitLines(text), { packs: [], severities: {}, today }, 1);
}
