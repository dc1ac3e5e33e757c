/** A clean domestic rock well, with everything that a log of one usually holds. */
export const rockWell = `# Kestrel Hollow, lot 4
well      KH-04
units     m mm
rules     general
place     44.6128 -78.3042
ground    287.4 m
owner     Kestrel Hollow Water Co-op
use       domestic
began     2026-05-04
finished  2026-05-06

hole
  0    - 7.2    254   air rotary
       - 61     152   down-the-hole hammer

strata
  0    - 0.3    topsoil, dark brown
       - 3.8    silty clay, brown, stiff, some gravel
       - 6.1    sand and gravel, grey, wet
       - 44.2   limestone, grey, fractured        ; soft seam at 22
       - 61     limestone, dark grey, hard

casing  +0.45 - 7.2   steel  168.3 x 6.4  welded
  shoe          7.2
  centralizers  1.5  4  6.7
  joints        6.1  1.55
  grout         0 - 7.2   neat cement, 0.29 m3, 9 x 40 kg bags, w/c 0.5, tremie, 2026-05-05 09:30

drilling  air 21 m3/min 2400 kPa, pipe 114
  7.2  - 13.2   18 min   air
       - 19.2   21 min   air+water 12 L/min
       - 25.2    9 min   foam                     ; returns lost 22 - 23

water
  38.5     fresh, 25 L/min
  54       fresh, 15 L/min
  level    5.2   2026-05-07

test  pump 40 L/min, intake 50, 2026-05-07 08:00
  0      5.2
  1      6.14
  2      6.71
  60    11.9
  recovery
  1     10.2
  60     5.6

disinfection  100 mg/L, 12 h, 2026-05-08
`;

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
