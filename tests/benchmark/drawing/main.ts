/**
 * What drawing costs, run by hand: `node .config/run.mjs tests/benchmark/drawing/main.ts`. Drawing a log as SVG is held
 * against a third of its full analysis plus 30 % of what a general XML library takes to write the same SVG, in one run.
 */
import { XMLBuilder, XMLParser } from 'fast-xml-parser';
import { splitLines } from '../../../grammar/index.ts';
import { analyse } from '../../../server/analysis/index.ts';
import type { Snapshot } from '../../../server/analysis/snapshot.ts';
import { drawingFile, drawSheets, drawWell } from '../../../server/drawing/index.ts';
import { median, timed } from '../clock.ts';
import { logOf } from '../logs.ts';
import { againstAim, number, row, rule } from '../print.ts';

const rounds = 41;
const warmUp = 20;
const ordered = { preserveOrder: true, ignoreAttributes: false, suppressEmptyNode: true };

/** A whole analysis: every stage is made, down to the findings and to the words of each layer, which are read last. */
function analysed(text: string): Pick<Snapshot, 'record' | 'findings'> & { readonly words: number } {
  const { record, findings } = analyse(splitLines(text), { packs: [], severities: {}, today: '2026-12-31' }, 1);
  const words = record.log.strata.reduce(
    (sum, { description, materials, qualities }) => sum + description.length + materials.length + qualities.length,
    0,
  );
  return { record, findings, words };
}

const sizes = process.argv.slice(2).map(Number);

row('layers', 'analysis', 'drawing', 'drawing : allowed', 'writing', 'pages');
rule();
for (const size of sizes.length > 0 ? sizes : [3, 30, 300]) {
  const { well } = logOf(size);
  const { record } = analysed(well);
  const svg = drawingFile(drawWell(record));
  const tree = new XMLParser(ordered).parse(svg);
  const builder = new XMLBuilder(ordered);
  const times: Record<'analysis' | 'drawing' | 'writing' | 'pages', number[]> = {
    analysis: [],
    drawing: [],
    writing: [],
    pages: [],
  };
  for (let round = 0; round < warmUp + rounds; round += 1) {
    const analysis = await timed(() => analysed(well).record);
    const taken = {
      analysis,
      drawing: await timed(() => drawingFile(drawWell(analysis.value))),
      writing: await timed(() => builder.build(tree)),
      pages: await timed(() => drawSheets(analysis.value, { layout: 'pages' }).map((sheet) => drawingFile(sheet))),
    };
    if (round < warmUp) continue;
    for (const what of ['analysis', 'drawing', 'writing', 'pages'] as const) times[what].push(taken[what].ms);
  }
  const [analysis, drawing, writing] = [median(times.analysis), median(times.drawing), median(times.writing)];
  const ratio = drawing / (analysis / 3 + 0.3 * writing);
  row(
    String(size),
    `${number(analysis)} ms`,
    `${number(drawing)} ms`,
    againstAim(ratio, size === 300 ? 1 : null),
    `${number(writing)} ms`,
    `${number(median(times.pages))} ms`,
  );
}
