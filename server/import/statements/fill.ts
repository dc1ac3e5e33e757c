import * as l10n from '@vscode/l10n';
import { line, type Outcome } from '../draft.ts';
import { lengthText } from '../lengths.ts';
import type { DepthUnit } from '../notes.ts';
import { intervalOf, lengthsOf, notTaken, ofWork, type Statement, termsIn, textsOf, wordsOf } from '../statement.ts';
import { intervalText } from '../tokens.ts';

type FillRow = 'grout' | 'seal' | 'pack';

const ignored =
  /^(?:grout|grouted|grouting|cemented|sealed|seal|seals|annulus|annular|around|casing|csg|packed|placed|used|hole|material|pack|mix|mixed|bottom|top|surface|put|poured-in|in|backfilled|backfill|back|plugged|abandoned|decommissioned|filled|well|was)\.?:?$/i;

function rowOf(words: string): FillRow {
  if (
    /\b(?:gravel|filter|sand|gvl|silica) ?-?pack(?:ed)?\b|\bpack(?:ed)?\b|\b(?:filter|silica|pea) (?:sand|gravel)\b/i.test(
      words,
    )
  )
    return 'pack';
  return /\b(?:seal|chips?|pellets?|tablets|granular|hole ?plug|backfill(?:ed)?|cuttings)\b/i.test(words) &&
    !/\bgrout/i.test(words)
    ? 'seal'
    : 'grout';
}

function depthText(statement: Statement): string {
  const interval = intervalOf(statement);
  if (interval) return intervalText(interval);
  const [length] = lengthsOf(statement).filter(({ unit }) => unit !== 'in' && unit !== 'mm');
  return `? - ${length ? lengthText(length) : '?'}`;
}

const spelledMaterial = (words: string): string =>
  words.replace(/\b(?:grouted|cemented) (?:in )?(?:w\/|with)? ?/gi, (verb) => (/^cem/i.test(verb) ? 'cement ' : ' '));

/** `grout 0 - 40 neat cement, 12 bags, tremie`, or a `seal` or a `pack`. */
export const annulusFill = (statement: Statement): Outcome => filled(statement, rowOf(wordsOf(statement)));

/** `0 - 40 neat cement, 12 bags` of an abandoned hole. */
export const abandoned = (statement: Statement): Outcome => filled(statement, null);

function filled(statement: Statement, row: FillRow | null): Outcome {
  const words = spelledMaterial(wordsOf(statement));
  const { terms, left } = termsIn(words, ['fill-material', 'placement'], ignored);
  const named = terms.filter(({ list }) => list === 'fill-material').map(({ name }) => name);
  const exact = named.filter((name) => name !== 'gravel pack');
  const materials = row === 'pack' && exact.length > 0 ? exact : named;
  const gradings = textsOf(statement, 'grading');
  const loose = row === 'seal' && materials[0] === 'bentonite slurry';
  const isPlainPack = materials.length === 0 && /\b(?:gravel|gvl) ?pack/i.test(words);
  const material = loose ? '?' : (materials[0] ?? (isPlainPack ? 'gravel pack' : gradings.length > 0 ? null : '?'));
  const depth = depthText(statement);
  const interval = intervalOf(statement);
  const said = [
    ...gradings,
    ...(material === null ? [] : [material]),
    ...textsOf(statement, 'volume').slice(0, 1),
    ...textsOf(statement, 'bags', 'mass').slice(0, 1),
    ...textsOf(statement, 'ratio'),
    ...terms
      .filter(({ list }) => list === 'placement')
      .map(({ name }) => name)
      .slice(0, 1),
    ...textsOf(statement, 'date').slice(0, 1),
  ];
  const [second] = materials.slice(1);
  const remark = loose ? ' ; bentonite, form not told' : '';
  const why = [
    ...(depth.includes('?') ? [l10n.t('its depths are not told in full')] : []),
    ...(material === '?' ? [l10n.t('its material is not told')] : []),
    ...(second === undefined || second === material
      ? []
      : [l10n.t('a second material, "{0}", has no place on the line', second)]),
    ...notTaken([...left, ...textsOf(statement, 'share', 'rate', 'pressure', 'open-date')]),
  ];
  return {
    items: [
      row === null
        ? line('abandonment', `${depth} ${said.join(', ')}`)
        : line('casing', `${row} ${depth} ${said.join(', ')}${remark}`),
    ],
    why,
    depths: interval ? [interval.from, interval.to] : lengthsOf(statement),
    openDate: null,
  };
}

const screenIgnored = /^(?:screen|screened|slot|slots|set|installed|size|slotted|scr|x|opening|openings|well)\.?:?$/i;

/** A bare slot: thousandths of an inch where the file is in inches, a trade number where it is in millimetres. */
function slotIn(text: string, units: DepthUnit | null): string {
  const [, figure] = /^slot ([\d.]+)$/.exec(text) ?? [];
  if (figure === undefined) return text;
  if (Number(figure) < 1) return units === 'm' ? `slot ${figure} mm?` : `slot ${figure} in`;
  return units === 'm' ? `slot #${Math.round(Number(figure))}` : text;
}

/** `screen 80 - 90 pvc 4" slot 0.010 in` */
export function wellScreen(given: Statement): Outcome {
  const statement = ofWork(given);
  const interval = intervalOf(statement);
  const lengths = lengthsOf(statement);
  const [sized] = [
    ...textsOf(statement, 'size'),
    ...lengths.filter(({ unit }) => unit === 'in' || unit === 'mm').map((each) => lengthText(each)),
  ];
  const rest = lengths.filter(({ unit }) => unit !== 'in' && unit !== 'mm').map((each) => lengthText(each));
  const { terms, left } = termsIn(wordsOf(statement), ['casing-material', 'screen-kind', 'joint-type'], screenIgnored);
  const depth = interval ? intervalText(interval) : '? - ?';
  const text = (units: DepthUnit | null): string =>
    [
      `screen ${depth}`,
      ...terms.map(({ name }) => name),
      ...(sized === undefined ? [] : [sized]),
      ...textsOf(statement, 'schedule'),
      ...textsOf(statement, 'slot').map((slot) => slotIn(slot, units)),
    ].join(', ');
  const why = [...(interval ? [] : [l10n.t('its depths are not told')]), ...notTaken([...left, ...rest])];
  return { items: [line('casing', text)], why, depths: interval ? [interval.from, interval.to] : [], openDate: null };
}
