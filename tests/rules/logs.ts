export { rockWell } from '../record/rock-well.ts';

/** A sound well whose casing was driven to rock, in US units. */
export const drivenWell = `well      TR-11
units     ft in gal-us
began     2026-06-02
finished  2026-06-03
hole
  0   - 140   6     casing hammer
      - 305   6     down-the-hole hammer
strata
  0   - 12    clay, brown
      - 138   sand and gravel, grey
      - 305   granite, grey, hard
casing  +1.5 - 140  steel 6.625 x 0.25 welded driven
  shoe   140
  joints 6 x 21  15.5
water
  246    fresh, 8 gpm
  level  31   2026-06-04
test  blow 8 gpm, stem 290, 1 h
`;

/** A screened gravel well of two strings. */
export const screenedWell = `well      FM-02
units     m mm
began     2026-07-01
finished  2026-07-04
hole
  0   - 12   400   mud rotary
      - 38   250   mud rotary
strata
  0   - 9    clay, brown, stiff
      - 24   silty sand, grey
      - 36   gravel, sandy, grey
      - 38   clay, blue
casing  +0.5 - 12   steel 323.9 x 9.5 welded
  grout   0 - 12   neat cement, 0.7 m3, tremie
casing  +0.6 - 36   pvc 141.3 sdr 17
  screen  30 - 36   pvc 141.3, slot 0.5
  pack    29 - 38   20/40 sand
  seal    27 - 29   bentonite pellets
  grout   0 - 27    neat cement, 1.4 m3, tremie
  centralizers  12 24 35
water
  24 - 36  fresh
  level    6.2  2026-07-05
`;
