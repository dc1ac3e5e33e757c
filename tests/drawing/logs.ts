import { readdirSync, readFileSync } from 'node:fs';

const samples = new URL('../../samples/', import.meta.url);

/** Every sample of the project, by file name. */
export const sampleLogs: readonly (readonly [string, string])[] = readdirSync(samples, {
  recursive: true,
  encoding: 'utf8',
})
  .filter((name) => name.endsWith('.well'))
  .sort()
  .map((name) => [name, readFileSync(new URL(name, samples), 'utf8')]);

/** A dug well of 5 m. */
export const shallowLog = `well DW-5
hole
  0 - 5  900  dug
strata
  0 - 0.4  topsoil
    - 2    clay, blue, soft
    - 5    gravel, wet
casing +0.3 - 5  concrete 800 x 60
  screen 3 - 5 concrete 800, slot 10
  grout 0 - 2.5 concrete
  pack 2.5 - 5 gravel
water
  2.1 fresh
  level 2.1 2026-05-01
`;

/** Four strings in feet, with every fitting there is. */
export const busyLog = `well FM-12
units ft in gal-us
site Fenmarrow, lower field
ground 812 ft
hole
  0 - 60  14  rotary
  - 140   10  rotary
  - 205   ?
strata
  0 - 2     topsoil
    - 18    silty clay, brown, stiff
    - ~31   till, grey, hard
    - 44?   gravel, brown
    - 110   shale, grey
    - 130   dolomite, light grey, fractured ; lost circulation, the crew waited for an hour
    - 205   granite, pink
casing +2 - 58 steel 10.75 x 0.365 welded
  shoe 58
  grout 0 - 58 neat cement, 100 ft3
casing 0 - 20 steel 14 temporary, pulled 2026-06-02
casing +1.5 - 170 steel 6.625 x 0.28 welded
  screen 170 - 190 stainless 6.625 slot 0.02
  centralizers 20 40 60 80 100 120 140
  joints 8 x 21
  seal 100 - 120 bentonite chips
  grout 0 - 100 bentonite slurry
  pack 120 - 200 10/20 sand, 20 bags
  packer 60 rubber
  pitless 6 bolt-on
  plug 204 cement
liner 150 - 205 pvc 4.5 sdr 26, perforated 190 - 205
water
  31 fresh, 5 gpm
  100 - 110 salty, total 20 gpm
  175 fresh, +30 gpm
  gas 150 methane
  level 22.5 2026-06-09
drilling mud
  60 - 80  30 min
  lost 122 - 126 total
test pump 30 gpm, intake 150, 2026-06-10 08:00
  0   22.5
  10  60
  60  88
cap vermin-proof
`;

/** Slips of the pen of every kind. */
export const absurdLog = `well <script>alert(1)</script>
hole
  0 - 999999999999 99999999
  0 - 10 150
strata
  0 - 5 clay
  9 - 4 sand
  ? - 20 gravel
  20 - ? limestone
  -1e30 rock
  ?
casing +900 - 50 steel 168.3 x 6.4
casing ? - 30 ?
  grout 0 - 100000000 neat cement 1 m3
water
  1e9 fresh 1 L/min
  ? salty
  level ?
`;

/** A log of many layers to 800 m. */
export function deepLog(layers: number): string {
  const each = 800 / layers;
  const kinds = ['clay, grey', 'sand, fine', 'limestone, grey, fractured, with some chert', 'shale', 'dolomite, buff'];
  const lines = Array.from(
    { length: layers },
    (_, n) => `  - ${((n + 1) * each).toFixed(2)} ${kinds[n % kinds.length]}`,
  );
  return ['well L-800', 'ground 120 m', 'hole', '  0 - 800 200 mud rotary', 'strata', ...lines, ''].join('\n');
}

export const handLogs: readonly (readonly [string, string])[] = [
  ['an empty log', ''],
  ['a dug well of 5 m', shallowLog],
  ['four strings in feet', busyLog],
  ['slips of the pen', absurdLog],
  ['3 layers to 800 m', deepLog(3)],
  ['300 layers to 800 m', deepLog(300)],
];
