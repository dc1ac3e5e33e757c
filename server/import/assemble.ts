import type { DepthUnit, Entry, NotationLine, Part } from './notes.ts';
import { parts } from './notes.ts';

/** Longer comments are parted, so that the notation reads every line. */
const longest = 2000;

const chunks = (text: string): string[] => {
  const found: string[] = [];
  for (let at = 0; at < text.length; at += longest) found.push(text.slice(at, at + longest));
  return found.length === 0 ? [''] : found;
};

/** A line of the notes as a comment. A note that begins with `allow` must not silence a rule. */
const commentsOf = (source: string): string[] =>
  source
    .split(/\r\n|\r|\n/)
    .flatMap((text) => chunks(text.trim()))
    .map((text) => (/^allow\b/i.test(text) ? `# : ${text}` : `# ${text}`.trimEnd()));

const whyComments = ({ status, why }: Entry): string[] =>
  status === 'understood' ? [] : why.map((each) => `# ^ ${each.slice(0, longest)}`);

const opens: Readonly<Record<Part, RegExp | null>> = {
  head: /^/,
  hole: null,
  strata: null,
  casing: /^(?:casing|liner)\b/,
  drilling: null,
  water: null,
  test: /^test\b/,
  work: /^/,
  abandonment: null,
};

const indented = ({ part, text }: NotationLine): string => (opens[part]?.test(text) ? text : `  ${text}`);

/** The part that an entry without lines is put with: that of the last line before it. */
function homes(entries: readonly Entry[]): Part[] {
  let home: Part = 'head';
  return entries.map(({ lines }) => {
    home = lines.at(-1)?.part ?? home;
    return home;
  });
}

/** What of an entry goes into a part, the comment above it; nothing where it has nothing to do with it. */
function piece(entry: Entry, part: Part, home: Part): string[] {
  const lines = entry.lines.filter((line) => line.part === part);
  if (lines.length === 0 && (entry.lines.length > 0 || home !== part)) return [];
  const isFirst = entry.lines.length === 0 || entry.lines[0]?.part === part;
  return [...entry.source.flatMap(commentsOf), ...(isFirst ? whyComments(entry) : []), ...lines.map(indented)];
}

const isString = ({ part, text }: NotationLine): boolean => part === 'casing' && /^(?:casing|liner)\b/.test(text);

type Placed = readonly [entry: Entry, home: Part];

/** An entry with its strings before what hangs on them. */
const ownStringFirst = ([entry, home]: Placed): Placed => [
  { ...entry, lines: [...entry.lines.filter(isString), ...entry.lines.filter((line) => !isString(line))] },
  home,
];

/** What hangs on a string must stand below one: what comes before the first string goes behind it. */
function stringsFirst(entries: readonly Placed[]): readonly Placed[] {
  const first = entries.findIndex(([entry]) => entry.lines.some(isString));
  const string = entries[first];
  if (string === undefined) return entries;
  const early = entries.slice(0, first).filter(([entry]) => entry.lines.length > 0);
  const comments = entries.slice(0, first).filter(([entry]) => entry.lines.length === 0);
  return [...comments, ownStringFirst(string), ...early, ...entries.slice(first + 1)];
}

function blockOf(part: Part, entries: readonly Placed[], bottomUp: boolean): string[] {
  const ordered =
    part === 'strata' && bottomUp ? [...entries].reverse() : part === 'casing' ? stringsFirst(entries) : entries;
  const lines = ordered.flatMap(([entry, home]) => piece(entry, part, home));
  if (lines.length === 0) return [];
  const isComment = (text: string) => text.startsWith('#');
  if (part === 'casing' && !lines.some((text) => opens.casing?.test(text)) && !lines.every(isComment))
    return ['# The notes name no string for what follows.', 'casing ? - ? ?', ...lines];
  const needsHeading = opens[part] === null && !lines.every(isComment);
  return needsHeading ? [part, ...lines] : lines;
}

const unitsLine = (units: DepthUnit | null, gallon: 'us' | 'imp' | null): string[] =>
  units === null ? [] : [`units ${units === 'm' ? 'm mm' : 'ft in'}${gallon === null ? '' : ` gal-${gallon}`}`];

/** What the text is made from, beside the entries. */
export interface Frame {
  readonly units: DepthUnit | null;
  readonly gallon: 'us' | 'imp' | null;
  readonly pack: string | null;
  /** True where the ground is listed from the bottom up. */
  readonly bottomUp: boolean;
}

/** The notation text: every entry's original as a comment above what was made of it, by section. */
export function assemble(entries: readonly Entry[], { units, gallon, pack, bottomUp }: Frame): string {
  const home = homes(entries);
  const placed = entries.map((entry, at) => [entry, home[at] ?? 'head'] as const);
  const blocks = parts.map((part) =>
    blockOf(
      part,
      placed.filter(([entry, its]) =>
        entry.lines.length === 0 ? its === part : entry.lines.some((line) => line.part === part),
      ),
      bottomUp,
    ),
  );
  const head = [...unitsLine(units, gallon), ...(pack === null ? [] : [`rules ${pack}`]), ...(blocks[0] ?? [])];
  const text = [head, ...blocks.slice(1)].filter((block) => block.length > 0).map((block) => block.join('\n'));
  return text.length === 0 ? '' : `${text.join('\n\n')}\n`;
}
