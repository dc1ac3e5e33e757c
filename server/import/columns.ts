import * as l10n from '@vscode/l10n';
import { type Length, lengthsIn } from './lengths.ts';
import { type Interval, tokensIn } from './tokens.ts';
import { tidy } from './typography.ts';

export const roles = [
  'from',
  'to',
  'interval',
  'thickness',
  'description',
  'colour',
  'detail',
  'remark',
  'well',
  'water',
] as const;
export type Role = (typeof roles)[number];

/** Which columns, counted from 0, have which part. */
export type ColumnMap = Readonly<Partial<Record<Role, readonly number[]>>>;

const names: readonly (readonly [Role, RegExp])[] = [
  ['thickness', /^(?:layer |bed )?(?:thickness|thick|thk|thkns)$/],
  [
    'from',
    /^(?:depth |interval )?(?:from|top|start|upper)(?: depth| of (?:layer|interval|formation))?$|^(?:depth to top|depth top|top of formation)$/,
  ],
  [
    'to',
    /^(?:depth |interval )?(?:to|bottom|bot|base|end|lower)(?: depth| of (?:layer|interval|formation))?$|^(?:depth to (?:base|bottom)|depth base|depth to)$/,
  ],
  ['interval', /^(?:depths?|intervals?|depth (?:interval|range)|from to|range)$/],
  ['colour', /^colou?rs?$/],
  ['remark', /^(?:remarks?|comments?|notes?|rem)$/],
  ['water', /^(?:water|water found|water bearing|yield|water yield)$/],
  ['well', /^(?:well|borehole|bore|hole)(?: ?(?:id|no|number|name))?$/],
  [
    'description',
    /^(?:(?:material|soil|rock|formation|geolog\w+|litholog\w+|strata|log|layer) )?(?:descriptions?|descr?|litholog\w+|litho|materials?|formations?|soils?|strata|stratum|geology|ground|rock|rock type|soil type|log|type of material|kind of (?:rock|material|formation))$/,
  ],
  [
    'detail',
    /^(?:texture|hardness|consistency|grain size|moisture|modifiers?|other materials?|secondary(?: materials?)?|weathering|fracturing)$/,
  ],
];

const unitWords = /(?:^|\s)(?:ft|feet|foot|m|met(?:re|er)s?|mbgl|mbgs|bgl|bgs)(?=\s|$)/g;

/** A column's name in small letters, without its unit: `TopDepth (ft)` as `top depth`. */
const plainName = (name: string): string =>
  name
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/[^a-z]+/g, ' ')
    .replace(unitWords, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** The part that a column's name gives it; null for a name that is not known. */
export function roleNamed(name: string): Role | null {
  const plain = plainName(name);
  return names.find(([, form]) => form.test(plain))?.[0] ?? null;
}

/** The columns whose names are known. */
export function mapByName(header: readonly string[]): ColumnMap {
  const map: Partial<Record<Role, number[]>> = {};
  header.forEach((name, at) => {
    const role = roleNamed(name);
    if (role !== null) map[role] = [...(map[role] ?? []), at];
  });
  return map;
}

/** `0,5` where a column writes its decimals so. */
export const isDecimalComma = (cell: string): boolean => /^\s*\d+,\d{1,2}\s*(?:m|ft|')?\s*$/.test(cell);

const plainLength = (figure: string): Length => ({
  start: 0,
  end: figure.length,
  value: Number(figure),
  unit: null,
  plus: false,
  about: false,
  doubtful: false,
  figure,
  unitText: '',
  parted: false,
});

/** A cell that is one length and nothing else. */
export function lengthCell(cell: string): Length | null {
  if (/^\d+(?:\.\d+)?$/.test(cell)) return plainLength(cell);
  if (!/\d/.test(cell)) return null;
  const text = tidy(cell);
  const [length, second] = lengthsIn(text);
  return length !== undefined && second === undefined && length.start === 0 && length.end === text.length
    ? length
    : null;
}

/** A cell that is one interval and nothing else. */
export function intervalCell(cell: string): Interval | null {
  if (!/\d\D+\d/.test(cell)) return null;
  const text = tidy(cell);
  const [token] = tokensIn(text, { dates: null });
  return token?.kind === 'interval' && token.start === 0 && token.end === text.length ? token.interval : null;
}

const depthRoles: readonly Role[] = ['from', 'to', 'interval', 'thickness'];

/** True where a map says where the depths are and what the ground is. */
export const isWhole = (map: ColumnMap): boolean =>
  depthRoles.some((role) => map[role] !== undefined) && (map.description ?? map.colour ?? map.detail) !== undefined;

const share = (rows: readonly (readonly string[])[], column: number, fits: (cell: string) => boolean): number => {
  const cells = rows.map((row) => row[column] ?? '').filter((cell) => cell.trim() !== '');
  return cells.length === 0 ? 0 : cells.filter(fits).length / cells.length;
};

const isLengthCell = (cell: string): boolean => lengthCell(cell) !== null || isDecimalComma(cell);

const fitsRole: Readonly<Partial<Record<Role, (cell: string) => boolean>>> = {
  from: isLengthCell,
  to: isLengthCell,
  thickness: isLengthCell,
  interval: (cell) => intervalCell(cell) !== null || isLengthCell(cell),
  description: (cell) => lengthCell(cell) === null,
};

/**
 * Whether a map made from the header may be used without asking. It may where each of from, to, interval and thickness
 * stands for one column at most, at least one of them and a description are named, and at least 95 of 100 filled cells of
 * every such column are what its name says.
 */
export function isCertain(map: ColumnMap, rows: readonly (readonly string[])[]): boolean {
  if (!isWhole(map) || depthRoles.some((role) => (map[role]?.length ?? 0) > 1)) return false;
  return [...depthRoles, 'description' as const].every((role) =>
    (map[role] ?? []).every((column) => share(rows, column, fitsRole[role] ?? (() => true)) >= 0.95),
  );
}

/** The map that the content speaks for, where the header does not settle it: a proposal, never applied by itself. */
export function mapByContent(rows: readonly (readonly string[])[]): ColumnMap {
  const sample = rows.slice(0, 500);
  const width = sample.reduce((most, row) => Math.max(most, row.length), 0);
  const columns = Array.from({ length: width }, (_, at) => at);
  const numeric = columns.filter((at) => share(sample, at, isLengthCell) >= 0.8);
  const spans = columns.filter((at) => share(sample, at, (cell) => intervalCell(cell) !== null) >= 0.8);
  const textLength = (at: number) =>
    sample.reduce((sum, row) => sum + ((row[at] ?? '').match(/\p{L}/gu)?.length ?? 0), 0);
  const [words] = columns
    .filter((at) => !numeric.includes(at) && !spans.includes(at))
    .sort((a, b) => textLength(b) - textLength(a));
  const description: ColumnMap = words === undefined ? {} : { description: [words] };
  const [span] = spans;
  if (span !== undefined) return { interval: [span], ...description };
  const pair = numeric
    .flatMap((a, at) => numeric.slice(at + 1).map((b) => [a, b] as const))
    .find(([a, b]) => follows(sample, a, b));
  if (pair) return { from: [pair[0]], to: [pair[1]], ...description };
  const [only] = numeric;
  return only === undefined ? description : { to: [only], ...description };
}

/** True where each row's second number is mostly the next row's first. */
function follows(rows: readonly (readonly string[])[], from: number, to: number): boolean {
  const pairs = rows
    .slice(1)
    .map((row, at) => lengthCell(row[from] ?? '')?.value === lengthCell(rows[at]?.[to] ?? '')?.value);
  return pairs.length > 0 && pairs.filter(Boolean).length / pairs.length >= 0.5;
}

const columnName = (header: readonly string[] | null, column: number): string => {
  const name = header?.[column]?.trim() ?? '';
  return name === '' || /[,=+]/.test(name) || /^\d+$/.test(name) ? String(column + 1) : name;
};

/** A map as `--columns` takes it. */
export const mapText = (map: ColumnMap, header: readonly string[] | null): string =>
  roles
    .filter((role) => map[role] !== undefined)
    .map((role) => `${role}=${(map[role] ?? []).map((column) => columnName(header, column)).join('+')}`)
    .join(',');

/** Why a map as written cannot be used. */
export interface BadMap {
  readonly says: string;
}

const isRole = (name: string): name is Role => roles.some((role) => role === name);

function columnOf(name: string, header: readonly string[] | null, width: number): number | BadMap {
  const at = (header ?? []).findIndex((each) => each.trim().toLowerCase() === name.toLowerCase());
  if (at !== -1) return at;
  if (/^\d+$/.test(name) && Number(name) >= 1 && Number(name) <= width) return Number(name) - 1;
  const says = header
    ? l10n.t('there is no column "{0}"; the columns are {1}', name, header.map((each) => `"${each.trim()}"`).join(', '))
    : l10n.t('there is no column "{0}"; there are {1} columns, counted from 1', name, width);
  return { says };
}

/** Reads `from=TopDepth,to=2,description=Litho+Colour`. */
export function readMap(text: string, header: readonly string[] | null, width: number): ColumnMap | BadMap {
  const map: Partial<Record<Role, number[]>> = {};
  for (const pair of text.split(',')) {
    const [, role = '', columns = ''] = /^\s*([a-z]+)\s*=\s*(.+?)\s*$/i.exec(pair) ?? [];
    const name = role.toLowerCase() === 'color' ? 'colour' : role.toLowerCase();
    if (!isRole(name))
      return { says: l10n.t('"{0}" is none of {1}', pair.trim(), roles.map((each) => `${each}=COLUMN`).join(', ')) };
    for (const each of columns.split('+')) {
      const column = columnOf(each.trim(), header, width);
      if (typeof column !== 'number') return column;
      map[name] = [...(map[name] ?? []), column];
    }
  }
  if (!isWhole(map))
    return { says: l10n.t('a map needs the depths (from and to, to alone, interval, or thickness) and description') };
  return map;
}
