/**
 * What each feature costs beside a full analysis of the same log, in one run. Each answer is asked for at another place
 * of a text that has just been edited and checked, as an editor asks; of all of them the 95th in a hundred counts, and of
 * the analyses, which take their turn among the answers, the median.
 */
import { analyse, update } from '../../server/analysis/index.ts';
import type { Settings, Snapshot } from '../../server/analysis/snapshot.ts';
import { quickFixActions } from '../../server/features/code-actions.ts';
import { codeLenses } from '../../server/features/code-lenses.ts';
import { complete } from '../../server/features/completion.ts';
import { contactDefinition, contactReferences } from '../../server/features/contacts.ts';
import { documentHighlights } from '../../server/features/document-highlights.ts';
import { documentLinks } from '../../server/features/document-links.ts';
import { documentSymbols } from '../../server/features/document-symbols.ts';
import { foldingRanges } from '../../server/features/folding-ranges.ts';
import { formatEdits } from '../../server/features/format.ts';
import { hover } from '../../server/features/hover.ts';
import { inlayHints } from '../../server/features/inlay-hints.ts';
import { nextItem } from '../../server/features/next-item.ts';
import { onEnter } from '../../server/features/on-type.ts';
import type { Position } from '../../server/features/position.ts';
import { refactorings } from '../../server/features/refactorings.ts';
import { selectionRanges } from '../../server/features/selection-ranges.ts';
import { semanticTokens } from '../../server/features/semantic-tokens.ts';
import { showsAll } from '../../server/features/shows.ts';
import { signatureHelp } from '../../server/features/signature-help.ts';
import { wellIdAt } from '../../server/features/well-id.ts';
import { median, timed } from './clock.ts';
import { editPlace, letters, logOf } from './logs.ts';
import { againstAim, number, row, rule } from './print.ts';

const settings: Settings = { packs: [], severities: {}, today: '2026-12-31' };

/** What an editor shows of a text at once, in lines. */
const screen = 60;

type Ask = (snapshot: Snapshot, at: Position) => unknown;

const selected = (at: Position) => ({ first: at, last: at });

const atPlace: Readonly<Record<string, Ask>> = {
  hover,
  completion: (snapshot, at) => complete(snapshot, at),
  enter: onEnter,
  tab: (snapshot, { line, column }) => nextItem(snapshot, { line, start: column, end: column }, null),
  'quick fixes': (snapshot, at) => quickFixActions(snapshot, selected(at)),
  refactorings: (snapshot, at) => refactorings(snapshot, selected(at), false),
  'document highlight': documentHighlights,
  definition: contactDefinition,
  references: (snapshot, at) => contactReferences(snapshot, at, true),
  'signature help': signatureHelp,
  'selection ranges': selectionRanges,
  'well id': wellIdAt,
  'inlay hints of a screen': (snapshot, { line }) => inlayHints(snapshot, line, line + screen, showsAll.inlayHints),
  'semantic tokens of a screen': (snapshot, { line }) => semanticTokens(snapshot, line, line + screen),
};

const ofFile: Readonly<Record<string, Ask>> = {
  'document symbols': documentSymbols,
  folding: foldingRanges,
  'code lenses': codeLenses,
  'document links': documentLinks,
  'semantic tokens of the file': (snapshot) => semanticTokens(snapshot, 0, snapshot.lines.length - 1),
  'format of the file': (snapshot) => formatEdits(snapshot),
};

const features = { ...atPlace, ...ofFile };

const p95 = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.ceil(values.length * 0.95) - 1] ?? Number.NaN;

const checked = (snapshot: Snapshot): Snapshot => {
  snapshot.findings.length;
  return snapshot;
};

/** The text with one letter written over, checked. */
function edited(snapshot: Snapshot, size: number, round: number): Snapshot {
  const { line, character } = editPlace(snapshot.lines.join('\n'), size);
  const text = snapshot.lines[line] ?? '';
  const letter = letters[round % 2] ?? 'm';
  const inserted = [text.slice(0, character) + letter + text.slice(character + 1)];
  return checked(update(snapshot, { first: line, removed: 1, inserted }, settings, snapshot.version + 1));
}

const goldenSection = (Math.sqrt(5) - 1) / 2;

/**
 * The features, beginning with another one in every round: what the engine must do between the answers, such as looking
 * for memory to free, then falls on each as often as on any other.
 */
function inTurn<T>(all: readonly T[], round: number): readonly T[] {
  const first = Math.floor(((round * goldenSection) % 1) * all.length);
  return [...all.slice(first), ...all.slice(0, first)];
}

/** A place of the text, another in every round. */
function placeOf({ lines }: Snapshot, round: number, feature: number): Position {
  const line = (round * 7919 + feature * 104_729) % lines.length;
  return { line, column: (round * 31) % ((lines[line]?.length ?? 0) + 1) };
}

const wholeAnalysis = 'whole analysis';

/** Everything that is timed in a round: the features, and the analysis of the whole text as it stands, in the same company. */
const asked: readonly (readonly [string, Ask])[] = [
  [wholeAnalysis, ({ lines }) => checked(analyse(lines, settings, 1))],
  ...Object.entries(features),
];

async function measure(size: number, rounds: number): Promise<ReadonlyMap<string, readonly number[]>> {
  const times = new Map(asked.map(([name]) => [name, [] as number[]]));
  let snapshot = checked(analyse(logOf(size).well.split('\n'), settings, 1));
  for (let round = 0; round < rounds; round += 1) {
    snapshot = edited(snapshot, size, round);
    for (const [at, [name, ask]] of inTurn([...asked.entries()], round)) {
      const place = placeOf(snapshot, round, at);
      times.get(name)?.push((await timed(() => ask(snapshot, place))).ms);
    }
  }
  return times;
}

const roundsFor = (size: number): number => (size <= 1000 ? 200 : 40);

/** Prints the 95th in a hundred of every feature beside the full analysis, for logs of so many lines; of three sizes where none is named. */
export async function featuresBeside(sizes: readonly number[]): Promise<void> {
  await measure(1000, 150);
  for (const size of sizes.length > 0 ? sizes : [100, 1_000, 10_000]) {
    const taken = await measure(size, roundsFor(size));
    const full = median(taken.get(wholeAnalysis) ?? []);
    console.log(`\nFeatures in a log of ${size} lines, beside a full analysis of ${number(full)} ms\n`);
    row('feature', 'p95, ms', '', 'of the analysis');
    rule();
    for (const name of Object.keys(features)) {
      const ms = p95(taken.get(name) ?? []);
      row(name, number(ms), '', againstAim(ms / full, 0.1));
    }
  }
}
