const well = [
  'ground 287.4 m',
  'hole',
  '  0 - 7.2 254',
  '  - 61 152',
  'strata',
  '  0 - 3.8 clay',
  '  - 61 sand',
  'casing +0.45 - 7.2 steel 168.3 x 6.4',
];

const wellWith = (more: string): string => [...well, more].join('\n');

/** What is pointed at, in brackets, and what is then said of it, as it is read. */
export const hovers: readonly (readonly [what: string, marked: string, said: RegExp])[] = [
  ['a term', 'strata\n  0 - 6.1 [[lime|stone]], grey', /limestone.*Source: \S/s],
  ['a short form', 'strata\n  0 - 6.1 lst [[b|rn]]', /brown.*Source: \S/s],
  // NIST SP 811, appendix B: 1 ft = 0.3048 m exactly.
  [
    'a depth',
    wellWith('').replace('- 61 sand', '- [[6|1]] sand'),
    /61 m = 200\.13 ft.*Interval of 57\.2 m.*Elevation 226\.4 m/s,
  ],
  // ASME B36.10M: 6 in nominal pipe is 6.625 in outside.
  ['a diameter', 'casing 0 - 7.2 steel [[168|.3]] x 6.4', /6\.626 in.*6 in nominal/s],
  // Worked by hand: π/4 (0.254² - 0.1683²) 7.2 = 0.2047 m³.
  [
    'a figure',
    wellWith('  [[gr|out]] 0 - 7.2 neat cement, 0.29 m3'),
    /annulus volume.*0\.205 m³.*π\/4.*254 mm \(line 3\).*168\.3 mm \(line 8\)/s,
  ],
  // 5.65 m below a casing that stands up 0.45 m is 5.2 m below ground.
  ['a level', wellWith('water\n  level [[5.6|5 toc]] 2026-05-07'), /5\.65 m.*5\.2 m = 17\.06 ft below ground/s],
  ['the limits of a pack', 'rules [[gen|eral]]', /not the law.*grout-allowance.*NR 812/s],
  ['a keyword', 'casing 0 - 7.2 steel\n  [[sh|oe]] 7.2', /shoe at the foot.*shoe 7\.2/s],
];

/** A log with a hint of each kind. */
export const hinted = [
  'hole',
  '  0 - 7.2 254',
  '  - 38 ft 152',
  'casing 0 - 7.2 steel 168.3 x 6.4',
  '  grout 0 - 7.2 neat cement, 0.29 m3',
  'drilling air 21 m3/min',
  '  7.2 - 13.2 18 min',
];

/** Its hints by their setting: 1 ft = 0.3048 m; the annulus as above and 15 % more; 6 m in 18 min. */
export const hints = {
  thickness: '4.382 m',
  units: '= 11.58 m',
  requiredVolume: 'required 0.235 m³',
  penetrationRate: '0.333 m/min',
};

export type HintKind = keyof typeof hints;

export const hintKinds = Object.keys(hints) as HintKind[];

/** The lines of that log with its hints of some kinds. */
export function withHints(kinds: readonly HintKind[]): string[] {
  const hint = (kind: HintKind): string => (kinds.includes(kind) ? hints[kind] : '');
  return hinted.map((line) => {
    if (line.includes('38 ft')) return line.replace('38 ft', `38 ft${hint('units')}${hint('thickness')}`);
    if (line.includes('grout')) return `${line}${hint('requiredVolume')}`;
    return line.includes('18 min') ? `${line}${hint('penetrationRate')}` : line;
  });
}
