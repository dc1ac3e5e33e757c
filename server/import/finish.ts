import * as l10n from '@vscode/l10n';
import { assemble } from './assemble.ts';
import { faultsOf, readIn } from './check.ts';
import type { Draft, DraftItem, DraftLayer } from './draft.ts';
import { type Layers, resolveLayers } from './layers.ts';
import { inMetres, type Length, lengthText } from './lengths.ts';
import type {
  DepthUnit,
  Entry,
  LayerValues,
  NotationLine,
  Question,
  ReadNotes,
  ReadOptions,
  Trouble,
} from './notes.ts';

export interface Drafted {
  readonly drafts: readonly Draft[];
  /** The unit that the notes name for all depths. */
  readonly told: DepthUnit | null;
  /** What the notes say that the one figure of each layer is. */
  readonly layers: LayerValues | null;
  readonly troubles: readonly Trouble[];
}

const systemOf = ({ unit }: Length): DepthUnit | null =>
  unit === null ? null : unit === 'ft' || unit === 'in' ? 'ft' : 'm';

/** The depths of a draft as they are read: of an interval's two, one with a unit speaks for both. */
function systemsOf({ items, depths }: Draft): { systems: DepthUnit[]; hasBare: boolean } {
  const systems = depths.flatMap((each) => systemOf(each) ?? []);
  const pairs = items.some((item) => item.kind === 'layer' && item.how === 'interval');
  const bare = depths.filter((each) => each.unit === null && each.value !== 0);
  return { systems, hasBare: bare.length > 0 && !(pairs && depths.length === 2 && systems.length === 1) };
}

interface Units {
  readonly units: DepthUnit | null;
  readonly question: Question | null;
}

const askUnits = (line: number, mixed: boolean): Question => ({
  about: 'units',
  line,
  says: mixed
    ? l10n.t('depths in feet stand beside depths in metres, and some have no unit: which is it for these?')
    : l10n.t('the notes do not say whether depths are in metres or in feet'),
  answers: ['m', 'ft'],
  blocking: true,
});

function unitsOf(drafts: readonly Draft[], told: DepthUnit | null, given: DepthUnit | null): Units {
  let [feet, metres] = [0, 0];
  let bareLine: number | null = null;
  for (const draft of drafts) {
    const { systems, hasBare } = systemsOf(draft);
    for (const system of systems) system === 'ft' ? feet++ : metres++;
    if (hasBare) bareLine ??= draft.first;
  }
  const known = given ?? told;
  if (known !== null) return { units: known, question: null };
  const isMixed = feet > 0 && metres > 0;
  if (bareLine !== null && (isMixed || feet + metres === 0))
    return { units: null, question: askUnits(bareLine, isMixed) };
  if (feet + metres === 0) return { units: null, question: null };
  return { units: feet >= metres ? 'ft' : 'm', question: null };
}

const layersOf = (drafts: readonly Draft[]): DraftLayer[] =>
  drafts.flatMap(({ items }) => items.filter((item) => item.kind === 'layer'));

/** The deepest bottom that a line of `hole` reaches, in metres. */
function deepestHole(drafts: readonly Draft[], bare: DepthUnit): number {
  let deepest = 0;
  for (const { items, depths } of drafts)
    if (items.some((item) => item.kind === 'line' && item.part === 'hole'))
      for (const depth of depths) deepest = Math.max(deepest, inMetres(depth, bare));
  return deepest;
}

interface Made {
  readonly lines: readonly NotationLine[];
  readonly why: readonly string[];
}

const none: Made = { lines: [], why: [] };

/** A line that the notation reads without a fault; what it does not read stays a comment. */
function checked(line: NotationLine): Made {
  const [fault] = faultsOf(readIn(line.part, line.text));
  if (fault === undefined) return { lines: [line], why: [] };
  return {
    lines: [],
    why: [l10n.t('the notation does not read "{0}" ({1}: "{2}")', line.text, fault.code, fault.written)],
  };
}

const headKeyword = ({ part, text }: NotationLine): string | null =>
  part === 'head' ? (text.split(' ', 1)[0] ?? null) : null;

const unlikeUnits = (told: DepthUnit): Trouble => ({
  line: 1,
  says:
    told === 'm'
      ? l10n.t(
          'the notes say that depths are in metres; the other unit was given, and was taken for depths without one',
        )
      : l10n.t('the notes say that depths are in feet; the other unit was given, and was taken for depths without one'),
});

/** Turns drafts into entries and their text, now that all of them are known. */
export function finish({ drafts, told, layers: single, troubles }: Drafted, options: ReadOptions): ReadNotes {
  const { units, question } = unitsOf(drafts, told, options.units);
  const unlike = options.units !== null && told !== null && told !== options.units;
  const bare = units ?? 'ft';
  const layers = resolveLayers(layersOf(drafts), bare, options.layers ?? single);
  const deepest = deepestHole(drafts, bare);
  const seen = new Set<string>();
  let next = 0;

  const layerLine = (): Made => {
    const layer = layers.layers[next++];
    if (layer === undefined) return none;
    const made = checked({ part: 'strata', text: layer.plain });
    const lines = made.lines.map((line) => ({ ...line, text: layer.text }));
    return { lines, why: [...layer.why, ...made.why] };
  };
  const headLine = (line: NotationLine): Made => {
    const keyword = headKeyword(line);
    if (keyword !== null && seen.has(keyword))
      return { lines: [], why: [l10n.t('a second {0}; the first one stands', keyword)] };
    if (keyword !== null) seen.add(keyword);
    return checked(line);
  };
  const make = (item: DraftItem): Made => {
    if (item.kind === 'layer') return layerLine();
    if (item.kind === 'line') {
      const text = typeof item.text === 'string' ? item.text : item.text(units);
      return headLine({ part: item.part, text });
    }
    const isReached = Math.abs(deepest - inMetres(item.depth, bare)) < 1e-6;
    return isReached ? none : checked({ part: 'hole', text: `0 - ${lengthText(item.depth)} ?` });
  };
  const entries = drafts.map((draft): Entry => {
    const made = draft.items.map(make);
    const lines = made.flatMap((each) => each.lines);
    const why = [...new Set([...draft.why, ...made.flatMap((each) => each.why)])];
    const { first, last, source } = draft;
    return {
      first,
      last,
      source,
      lines,
      why,
      status: why.length === 0 ? 'understood' : lines.length === 0 ? 'not' : 'partly',
    };
  });
  const questions = [...(question === null ? [] : [question]), ...otherQuestions(drafts, entries, layers, options)];
  const isOpen = questions.some(({ blocking }) => blocking);
  const frame = { units, gallon: options.gallon, pack: options.pack, bottomUp: layers.bottomUp };
  return {
    entries,
    units,
    questions,
    troubles: unlike ? [...troubles, unlikeUnits(told)] : troubles,
    bottomUp: layers.bottomUp,
    text: isOpen ? '' : assemble(entries, frame),
  };
}

const gallonWord = /\d ?(?:gal|gpm|gph)(?![\w-])/;

function otherQuestions(
  drafts: readonly Draft[],
  entries: readonly Entry[],
  layers: Layers,
  options: ReadOptions,
): Question[] {
  const gallon = entries.find(({ lines }) => lines.some(({ text }) => gallonWord.test(text)));
  const dated = drafts.find(({ openDate }) => openDate !== null);
  const layered =
    layers.openAt === null
      ? undefined
      : drafts.find(({ items }) => items.some((item) => item.kind === 'layer' && item.how === 'single'));
  return [
    ...(gallon && options.gallon === null
      ? [
          {
            about: 'gallon' as const,
            line: gallon.first,
            says: l10n.t('the notes do not say which gallon they mean'),
            answers: ['us', 'imp'],
            blocking: false,
          },
        ]
      : []),
    ...(dated
      ? [
          {
            about: 'dates' as const,
            line: dated.first,
            says: l10n.t('"{0}" could be two days: is the day or the month first?', dated.openDate ?? ''),
            answers: ['dmy', 'mdy'],
            blocking: false,
          },
        ]
      : []),
    ...(layered
      ? [
          {
            about: 'layers' as const,
            line: layered.first,
            says: l10n.t('each layer has one figure, which could be its thickness, its base or its top'),
            answers: ['thickness', 'bases', 'tops'],
            blocking: false,
          },
        ]
      : []),
  ];
}
