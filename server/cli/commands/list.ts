import { Buffer } from 'node:buffer';
import type { Snapshot } from '../../analysis/snapshot.ts';
import { questionsFor } from '../../export/questions/index.ts';
import { wellsHtml } from '../../export/wells-page.ts';
import { folderWellOf } from '../../folder/folder-well.ts';
import { countsOf, countsTogether, summaryOf } from '../../folder/summary.ts';
import { type Arguments, type Command, choiceOption, switchOption, valueOption } from '../command.ts';
import { type Engine, engineFor } from '../engine.ts';
import { type Exit, graver } from '../exit.ts';
import { findInputs, type Input } from '../inputs.ts';
import { filtered, sorted } from '../list/choose.ts';
import { keys, textColumns } from '../list/columns.ts';
import { listCsv, listJson, listText, madeHarmless } from '../list/formats.ts';
import { listGeojson, placesLeft } from '../list/geojson.ts';
import type { Listed } from '../list/listed.ts';
import { rulesOption } from '../packs.ts';
import { printable } from '../printable.ts';
import { todayOption } from '../today.ts';
import { findingsTogether, type ReadWell, readEach } from '../together.ts';
import { reasonOf, Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

type Read = Listed & ReadWell;

const readWith =
  (today: string) =>
  ({ name, path }: Input, snapshot: Snapshot): Read => ({
    file: name,
    path,
    well: folderWellOf(snapshot, name, name),
    summary: summaryOf(snapshot, snapshot.findings, today),
    questions: questionsFor(snapshot.record, snapshot.findings, snapshot.lines),
  });

/** The wells, the findings of the folder that they make together counted with their own. */
async function listedOf(read: readonly Read[], engine: Engine): Promise<readonly Listed[]> {
  const ofFolder = await findingsTogether(read, engine);
  return read.map(({ file, summary, questions }) => {
    const findings = countsTogether(summary.findings, countsOf(ofFolder.get(file) ?? []));
    return { file, summary: { ...summary, findings }, questions };
  });
}

const pageOf = (wells: readonly Listed[], today: string): string =>
  wellsHtml({
    title: 'Wells and questions for their crews',
    today,
    columns: textColumns.map(({ title }) => title),
    wells: wells.map((well) => ({
      name: well.summary.id ?? well.file,
      file: well.file,
      cells: textColumns.map(({ text }) => text(well)),
      questions: well.questions,
    })),
  });

interface Format {
  readonly write: (wells: readonly Listed[], today: string) => string;
  /** What the reader must know of it, one sentence each. */
  readonly notes: (wells: readonly Listed[]) => readonly string[];
}

const noNotes = (): readonly string[] => [];

function csvNotes(wells: readonly Listed[]): readonly string[] {
  const count = madeHarmless(wells);
  if (count === 0) return [];
  const cells = count === 1 ? 'cell begins' : 'cells begin';
  return [`${count} ${cells} with an apostrophe, so that no spreadsheet takes what was logged for a formula`];
}

const formats: Readonly<Record<string, Format>> = {
  text: { write: (wells) => printable(listText(wells)), notes: noNotes },
  csv: { write: listCsv, notes: csvNotes },
  json: { write: listJson, notes: noNotes },
  geojson: { write: listGeojson, notes: placesLeft },
  html: { write: pageOf, notes: noNotes },
};

async function put(text: string, output: string | null, inputs: readonly Input[], world: World): Promise<void> {
  if (output === null || output === '-') {
    world.print(text);
    return;
  }
  if (inputs.some(({ path }) => path === output)) throw new Unusable(`${output} is one of the logs; name another file`);
  try {
    await world.writeFile(output, Buffer.from(text, 'utf8'));
  } catch (error) {
    throw new Unusable(`${output}: not written: ${reasonOf(error)}`);
  }
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const choose = (wells: readonly Listed[]): readonly Listed[] =>
    sorted(filtered(wells, given.values('filter')), given.value('sort'), given.has('reverse'));
  choose([]);
  const engine = await engineFor(given, world);
  const { inputs, outcome: found } = await findInputs(given.positionals, world);
  const { kept, outcome } = await readEach(inputs, engine, world, readWith(engine.today));
  const wells = choose(await listedOf(kept, engine));
  const format = formats[given.value('format') ?? 'text'];
  if (format) {
    await put(format.write(wells, engine.today), given.value('output'), inputs, world);
    for (const note of format.notes(wells)) world.complain(`note: ${note}\n`);
  }
  return [found, outcome, engine.outcome()].reduce(graver);
}

export const list: Command = {
  name: 'list',
  usage: 'drillhand list FOLDER|FILE… [options]',
  summary: 'List wells: id, place, depth, strings, level, yield, findings, due date.',
  options: [
    choiceOption('format', Object.keys(formats), 'how to write the list (default: text)'),
    valueOption('output', 'FILE', 'the file to write (default: standard output)', { short: 'o' }),
    valueOption('sort', 'KEY', 'sort by this key; wells that lack it come last'),
    switchOption('reverse', 'sort from the greatest down'),
    valueOption('filter', 'CONDITION', 'list only wells like this, such as "depth>60"; repeat it for more', {
      many: true,
    }),
    rulesOption,
    todayOption,
  ],
  notes: [
    `Keys: ${keys.map(({ key }) => key).join(', ')}.`,
    'Conditions: =, !=, <, <=, >, >= and ~ (contains); "level=?" is a level that is not known. Depths and levels are',
    'metres and rates L/min unless a unit stands behind the number: "depth>=200ft", "yield<5gpm-us".',
    'CSV counts in m and L/min, JSON and GeoJSON in SI; what the log lacks is empty or null, "?" in the text.',
    'GeoJSON is on WGS 84 (RFC 7946): wells without a place on it have no geometry. CSV cells that a spreadsheet would',
    'take for a formula begin with an apostrophe. html is one page: the table, and the questions for each crew.',
  ],
  run,
};
