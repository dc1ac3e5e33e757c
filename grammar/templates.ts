/** A section, or the head of a log, as it is begun: a question mark stands for everything that has to be asked. */
export interface Template {
  /** The row of the table whose keyword it begins with. */
  readonly row: string;
  readonly title: string;
  /** In the snippet syntax of editors; `@rate` and the like are units, by the file's system. */
  readonly lines: readonly string[];
}

const ask = (stop: number): string => `\${${stop}:?}`;

/** Whole sections as they are most often logged. */
export const templates: readonly Template[] = [
  {
    row: 'well',
    title: 'well: the head of a log',
    lines: [
      `well      ${ask(1)}`,
      `units     \${2|m mm,ft in,ft in gal-us,ft in gal-imp|}`,
      `place     ${ask(3)}`,
      `owner     ${ask(4)}`,
      `began     ${ask(5)}`,
      '',
      '$0',
    ],
  },
  {
    row: 'hole',
    title: 'hole: for a casing, and on to the bottom',
    lines: ['hole', `  0    - ${ask(1)}   ${ask(2)}`, `       - ${ask(3)}   ${ask(4)}`, '', '$0'],
  },
  { row: 'strata', title: 'strata: the first layer', lines: ['strata', `  0    - ${ask(1)}   $0`] },
  {
    row: 'casing',
    title: 'casing: with shoe, centralizers and grout',
    lines: [
      `casing  +${ask(1)} - ${ask(2)}   \${3|steel,pvc|}  ${ask(4)}  \${5|welded,threaded,solvent welded|}`,
      '  shoe          $2',
      `  centralizers  ${ask(6)}`,
      `  grout         0 - $2   \${7|neat cement,bentonite grout|}, ${ask(8)} @volume, ${ask(9)} bags, \${10|tremie,pumped|}`,
      '',
      '$0',
    ],
  },
  {
    row: 'liner',
    title: 'liner: with a screen and its pack',
    lines: [
      `liner  ${ask(1)} - ${ask(2)}   \${3|pvc,steel|}  ${ask(4)}`,
      `  screen        ${ask(5)} - ${ask(6)}   slot ${ask(7)}`,
      `  pack          ${ask(8)} - $6   ${ask(9)}`,
      '',
      '$0',
    ],
  },
  {
    row: 'drilling',
    title: 'drilling: rods with their times',
    lines: [
      `drilling  air ${ask(1)} @air ${ask(2)} @pressure, pipe ${ask(3)}`,
      `  ${ask(4)} - ${ask(5)}   ${ask(6)} min   air`,
      `       - ${ask(7)}   ${ask(8)} min   air`,
      '',
      '$0',
    ],
  },
  {
    row: 'water',
    title: 'water: where it was found, and its level',
    lines: ['water', `  ${ask(1)}     fresh, ${ask(2)} @rate`, `  level    ${ask(3)}`, '', '$0'],
  },
  {
    row: 'test',
    title: 'test: pumping, then recovery',
    lines: [
      `test  \${1|pump,bail,blow|} ${ask(2)} @rate, intake ${ask(3)}`,
      `  0     ${ask(4)}`,
      `  1     ${ask(5)}`,
      `  60    ${ask(6)}`,
      '  recovery',
      `  1     ${ask(7)}`,
      `  60    ${ask(8)}`,
      '',
      '$0',
    ],
  },
  {
    row: 'abandonment',
    title: 'abandonment: sealed from the bottom up',
    lines: [
      'abandonment',
      `  0    - td   \${1|neat cement,bentonite grout|}, ${ask(2)} @volume, \${3|tremie,pumped|}`,
      '',
      '$0',
    ],
  },
];

type System = 'metric' | 'us';

const unitsOf: Readonly<Record<string, Readonly<Record<System, string>>>> = {
  rate: { metric: 'L/min', us: 'gpm' },
  air: { metric: 'm3/min', us: 'cfm' },
  volume: { metric: 'm3', us: 'ft3' },
  pressure: { metric: 'kPa', us: 'psi' },
};

/** The snippet of a template in the units of a file's system. */
export const snippetOf = ({ lines }: Template, system: System): string =>
  lines.join('\n').replace(/@(\w+)/g, (_, kind: string) => unitsOf[kind]?.[system] ?? '');
