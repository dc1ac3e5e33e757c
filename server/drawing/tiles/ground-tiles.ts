import type { Ground } from '../../model/log.ts';
import type { Paint, Shape, Tile } from '../shapes.ts';
import * as motif from './motifs.ts';

/** Size of a tile and what is in it, in mm. */
type Motif = readonly [width: number, height: number, shapes: readonly Shape[]];

const { bricks, corners, crosses, dashes, dots, lightDashes, pebbles } = motif;
const { saltires, solid, strokes, thickDashes, triangles, vees, wave } = motif;

const sandDots = dots([
  [0.5, 0.5],
  [2, 0.8],
  [1.2, 1.7],
  [2.7, 2.2],
  [0.4, 2.7],
]);
const shaleDashes = dashes([
  [0.2, 0.5, 2],
  [2.8, 0.5, 1],
  [0.9, 1.5, 1.7],
  [3.2, 1.5, 0.6],
  [0.1, 2.5, 1.2],
  [1.9, 2.5, 1.8],
]);
const brick: Motif = [4.4, 3.2, bricks(4.4, 1.6)];

/*
 * By number of FGDC-STD-013-2006, section 37 (numbers and ideas of the patterns from memory; drawn here, not copied).
 */
const numbered: Readonly<{ [fgdc: number]: Motif }> = {
  601: [
    5,
    4.4,
    [
      ...pebbles([
        [1.2, 1, 0.8, 0.55],
        [3.5, 1.2, 0.9, 0.65],
        [2.3, 2.6, 0.55, 0.4],
        [0.9, 3.4, 0.6, 0.45],
        [3.8, 3.3, 0.75, 0.5],
      ]),
      ...dots([
        [2.3, 0.5],
        [4.7, 2.2],
        [0.4, 2.1],
        [2.4, 3.9],
      ]),
    ],
  ],
  605: [
    5,
    4.4,
    triangles(
      [
        [1.2, 1.2],
        [3.6, 0.9],
        [2.4, 2.6],
        [0.8, 3.4],
        [4.1, 3.2],
      ],
      0.6,
    ),
  ],
  607: [3.1, 3.1, sandDots],
  608: [
    4,
    3,
    [
      ...dots([
        [0.6, 0.6],
        [2, 0.7],
        [3.3, 0.6],
        [1.2, 2.2],
        [2.7, 2.2],
      ]),
      ...dashes([[0.2, 1.4, 3.6]]),
    ],
  ],
  616: [
    4,
    2.4,
    [
      ...dashes([
        [0.4, 0.6, 0.9],
        [2.4, 1.8, 0.9],
      ]),
      ...dots([
        [2, 0.6],
        [2.7, 0.6],
        [0.4, 1.8],
        [1.2, 1.8],
      ]),
    ],
  ],
  619: [
    4,
    3,
    [
      ...dashes([
        [0.2, 0.5, 1.8],
        [2.1, 2, 1.7],
      ]),
      ...dots([
        [2.6, 0.5],
        [3.4, 0.5],
        [0.4, 2],
        [1.2, 2],
        [1, 1.2],
        [3, 1.3],
      ]),
    ],
  ],
  620: [4, 3, shaleDashes],
  623: [
    4.4,
    3.2,
    [
      ...dashes([
        [0.2, 0.6, 1.6],
        [2.6, 0.6, 1.5],
        [0.2, 2.2, 0.8],
        [1.5, 2.2, 1.7],
      ]),
      ...strokes([
        [
          [2.2, 0.2],
          [2.2, 1],
        ],
        [
          [1.2, 1.8],
          [1.2, 2.6],
        ],
      ]),
    ],
  ],
  624: [
    4,
    2.4,
    [
      ...thickDashes([
        [0.2, 0.6, 2.2],
        [1.6, 1.8, 2.2],
      ]),
      ...dashes([
        [2.9, 0.6, 0.8],
        [0.2, 1.8, 0.8],
      ]),
    ],
  ],
  625: [
    4,
    2.4,
    [
      ...thickDashes([
        [0.2, 0.5, 3],
        [1.2, 1.7, 2.6],
      ]),
      ...dashes([
        [0.2, 0.95, 3],
        [1.2, 2.15, 2.6],
      ]),
    ],
  ],
  626: [
    5.6,
    4,
    [
      ...dashes([
        [0.3, 1, 5],
        [0.3, 3, 5],
      ]),
      ...strokes([
        [
          [1.4, 1.5],
          [1.4, 2.5],
        ],
        [
          [4.2, 3.4],
          [4.2, 4],
        ],
        [
          [4.2, 0],
          [4.2, 0.5],
        ],
      ]),
    ],
  ],
  627: brick,
  629: [
    4.4,
    3.2,
    [
      ...bricks(4.4, 1.6),
      ...strokes([
        [
          [1.9, 1.7],
          [2.2, 1.3],
          [2.6, 1.3],
          [2.9, 1.7],
        ],
      ]),
    ],
  ],
  642: [4.4, 3.2, bricks(4.4, 1.6, 0.8)],
  649: [
    4.4,
    3.2,
    [
      ...dashes([[0, 1.6, 4.4]]),
      ...triangles(
        [
          [1.1, 0.85],
          [3.3, 2.45],
        ],
        0.45,
      ),
    ],
  ],
  653: [
    4,
    3,
    [
      ...dashes([
        [0.3, 1.5, 1.2],
        [2.3, 0.4, 1.2],
      ]),
      ...pebbles([
        [3, 1.9, 0.3, 0.3],
        [0.9, 0.6, 0.3, 0.3],
      ]),
    ],
  ],
  654: [
    4,
    3,
    [
      ...sandDots,
      ...dashes([
        [2.6, 0.4, 1],
        [0.4, 1.9, 0.8],
      ]),
    ],
  ],
  657: [
    4,
    3,
    [
      ...strokes([
        [
          [0.4, 1],
          [0.7, 0.4],
          [1, 1],
          [1.3, 0.4],
          [1.6, 1],
        ],
        [
          [2.4, 2.6],
          [2.7, 2],
          [3, 2.6],
          [3.3, 2],
          [3.6, 2.6],
        ],
      ]),
      ...dashes([
        [2.2, 0.9, 1.4],
        [0.3, 2.5, 1.4],
      ]),
    ],
  ],
  658: [2, 2, solid(2, 2)],
  659: [
    4,
    3,
    [
      ...solid(4, 3),
      ...lightDashes([
        [0.3, 0.7, 1.6],
        [2, 2.2, 1.6],
      ]),
    ],
  ],
  660: [
    4,
    3,
    [
      ...shaleDashes,
      ...strokes([
        [
          [1, 0.5],
          [1, 1.1],
        ],
        [
          [2.6, 1.5],
          [2.6, 2.1],
        ],
      ]),
    ],
  ],
  662: [
    4,
    3,
    [
      ...dashes([
        [0.2, 0.5, 1.6],
        [2.2, 2, 1.6],
      ]),
      ...vees(
        [
          [2.9, 0.6],
          [0.9, 2.1],
        ],
        0.35,
      ),
    ],
  ],
  663: [
    3.1,
    3.1,
    [
      ...sandDots,
      ...saltires(
        [
          [2.6, 1.4],
          [0.6, 1.5],
        ],
        0.25,
      ),
    ],
  ],
  664: [
    4,
    3,
    [
      ...thickDashes([
        [0.4, 0.7, 1],
        [2.4, 2.2, 1],
      ]),
      ...dots(
        [
          [2.6, 0.7],
          [0.9, 2.2],
        ],
        0.28,
      ),
    ],
  ],
  665: [
    4,
    3,
    [
      ...thickDashes([
        [0.4, 0.7, 1],
        [2.4, 2.2, 1],
      ]),
      ...crosses(
        [
          [2.8, 0.7],
          [0.9, 2.2],
        ],
        0.3,
      ),
    ],
  ],
  666: [
    4,
    3,
    [
      ...dashes([[0.2, 1.5, 3.6]]),
      ...dots(
        [
          [1, 0.6],
          [3, 2.4],
        ],
        0.36,
      ),
    ],
  ],
  667: [
    4,
    3,
    strokes([
      [
        [0.6, 0.3],
        [1, 1.3],
      ],
      [
        [1.3, 0.3],
        [1.7, 1.3],
      ],
      [
        [2.6, 1.8],
        [3, 2.8],
      ],
      [
        [3.3, 1.8],
        [3.7, 2.8],
      ],
    ]),
  ],
  668: [3, 3, crosses([[1.5, 1.5]], 1.5)],
  681: [
    5,
    4.4,
    [
      ...pebbles([
        [1.1, 1, 0.6, 0.45],
        [3.9, 3.2, 0.7, 0.5],
      ]),
      ...triangles(
        [
          [3.4, 1],
          [1.4, 3.3],
        ],
        0.45,
      ),
      ...dashes([
        [2, 0.5, 0.6],
        [0.3, 2.1, 0.7],
        [2.4, 2.2, 0.8],
        [2.4, 3.8, 0.6],
      ]),
      ...dots([
        [4.5, 1.8],
        [1.8, 1.6],
        [3.1, 3],
        [0.5, 3.9],
      ]),
    ],
  ],
  684: [
    3.4,
    3,
    [
      ...strokes([
        [
          [0.8, 0.3],
          [0.8, 1.1],
        ],
        [
          [2.4, 1.8],
          [2.4, 2.6],
        ],
      ]),
      ...dots([
        [2.2, 0.6],
        [0.7, 2.1],
      ]),
    ],
  ],
  701: [5, 3, [wave(0.8, 5, 0.4), wave(2.3, 5, -0.4)]],
  702: [
    4.4,
    3.4,
    [
      ...dots([
        [0.6, 0.6],
        [2.4, 0.4],
        [3.8, 1],
        [1.4, 1.6],
        [3, 2.2],
        [0.6, 2.8],
      ]),
      ...strokes([
        [
          [1.2, 0.8],
          [1.6, 0.5],
          [2, 0.8],
        ],
        [
          [2.6, 1.5],
          [3, 1.2],
          [3.4, 1.5],
        ],
        [
          [1.5, 2.9],
          [1.9, 2.6],
          [2.3, 2.9],
        ],
      ]),
    ],
  ],
  703: [
    2,
    2,
    strokes([
      [
        [0, 0],
        [2, 2],
      ],
      [
        [1, -1],
        [3, 1],
      ],
      [
        [-1, 1],
        [1, 3],
      ],
    ]),
  ],
  704: [
    5,
    4,
    [
      wave(0.8, 5, 0.35),
      ...crosses(
        [
          [1.3, 2.3],
          [3.8, 2.9],
        ],
        0.4,
      ),
    ],
  ],
  705: [
    4.6,
    3,
    [
      ...strokes([
        [
          [0.3, 0.8],
          [0.8, 0.4],
          [1.4, 0.8],
          [2, 0.5],
        ],
        [
          [2.6, 2.2],
          [3.1, 1.8],
          [3.7, 2.2],
          [4.3, 1.9],
        ],
        [
          [0.4, 2.4],
          [0.9, 2],
          [1.5, 2.4],
        ],
        [
          [3, 0.7],
          [3.5, 0.3],
          [4.1, 0.7],
        ],
      ]),
    ],
  ],
  708: [
    6,
    3.4,
    [
      wave(0.7, 6, 0.3),
      wave(1.2, 6, 0.3),
      wave(2.6, 6, -0.35),
      ...dots([
        [1.5, 2],
        [4.6, 1.9],
      ]),
    ],
  ],
  710: [
    4,
    3,
    [
      ...strokes([
        [
          [0.4, 0.8],
          [1, 0.3],
          [1.2, 1],
          [1.8, 0.5],
        ],
        [
          [2.3, 2.4],
          [2.9, 1.9],
          [3.1, 2.6],
          [3.7, 2.1],
        ],
      ]),
    ],
  ],
  711: [
    3.6,
    3,
    vees(
      [
        [0.8, 0.7],
        [2.6, 2.2],
      ],
      0.35,
    ),
  ],
  715: [
    5,
    4.4,
    [
      ...vees(
        [
          [1, 0.8],
          [4, 2.4],
        ],
        0.35,
      ),
      ...triangles(
        [
          [3.2, 0.9],
          [1.6, 3.1],
        ],
        0.5,
      ),
    ],
  ],
  717: [
    4.4,
    4,
    corners(
      [
        [0.7, 1.1, 0],
        [3, 0.9, 1],
        [1.8, 2.3, 2],
        [3.7, 3, 0],
        [0.8, 3.4, 3],
      ],
      0.6,
    ),
  ],
  718: [
    4.6,
    4.2,
    crosses(
      [
        [1, 0.9],
        [3.3, 1.5],
        [1.9, 2.9],
        [4, 3.5],
      ],
      0.45,
    ),
  ],
  721: [
    4.4,
    4,
    [
      ...corners(
        [
          [0.9, 1.2, 0],
          [3.2, 2.9, 2],
        ],
        0.6,
      ),
      ...crosses(
        [
          [3, 0.9],
          [1.1, 3.1],
        ],
        0.4,
      ),
    ],
  ],
  726: [
    4.6,
    4.2,
    [
      ...crosses(
        [
          [1, 0.9],
          [3.5, 2.9],
        ],
        0.4,
      ),
      ...dots(
        [
          [3.2, 0.9],
          [1.2, 3],
        ],
        0.35,
      ),
    ],
  ],
  728: [3.6, 3, [...vees([[0.9, 0.8]], 0.4), ...dots([[2.6, 2]], 0.3)]],
  729: [
    3.6,
    3.4,
    saltires(
      [
        [0.9, 0.9],
        [2.7, 2.5],
      ],
      0.4,
    ),
  ],
};

const rockStrokes: Motif = [
  3.6,
  3.6,
  strokes([
    [
      [0.3, 1.3],
      [1.3, 0.3],
    ],
    [
      [2.1, 3.1],
      [3.1, 2.1],
    ],
  ]),
];
const bare: Motif = [4, 4, []];

/* Where no number is known: the nearest idea for the family of ground. */
const families: Readonly<{ [family: string]: Motif }> = {
  soil: [
    3.6,
    3,
    strokes([
      [
        [0.6, 1],
        [0.9, 0.4],
      ],
      [
        [0.9, 1],
        [1.2, 0.4],
      ],
      [
        [2.3, 2.5],
        [2.6, 1.9],
      ],
      [
        [2.6, 2.5],
        [2.9, 1.9],
      ],
    ]),
  ],
  fine: [4, 3, shaleDashes],
  coarse: [3.1, 3.1, sandDots],
  mixed: [
    4.4,
    3.6,
    [
      ...pebbles([[1.1, 0.9, 0.5, 0.35]]),
      ...dots([
        [2.6, 0.7],
        [0.8, 2.6],
        [3.8, 2.9],
      ]),
      ...dashes([
        [2.2, 1.9, 0.8],
        [3, 1.2, 0.7],
      ]),
    ],
  ],
  organic: [
    4,
    3,
    strokes([
      [
        [0.4, 1],
        [0.7, 0.4],
        [1, 1],
        [1.3, 0.4],
        [1.6, 1],
      ],
      [
        [2.4, 2.6],
        [2.7, 2],
        [3, 2.6],
        [3.3, 2],
        [3.6, 2.6],
      ],
    ]),
  ],
  fill: [
    3.6,
    3.6,
    saltires(
      [
        [0.9, 0.9],
        [2.7, 2.7],
      ],
      0.45,
    ),
  ],
  sedimentary: [
    4,
    3,
    [
      ...dashes([[0.2, 0.7, 3.6]]),
      ...dots([
        [1, 2.2],
        [3, 2.2],
      ]),
    ],
  ],
  carbonate: brick,
  crystalline: [
    4.6,
    4.2,
    crosses(
      [
        [1, 0.9],
        [3.4, 3],
      ],
      0.45,
    ),
  ],
  volcanic: [
    4.4,
    4,
    corners(
      [
        [0.9, 1.2, 0],
        [3.1, 3, 1],
      ],
      0.6,
    ),
  ],
  rock: rockStrokes,
  void: bare,
  unknown: bare,
};

const tints: Readonly<{ [family: string]: Paint }> = {
  soil: 'ground-soil',
  fine: 'ground-fine',
  coarse: 'ground-coarse',
  mixed: 'ground-mixed',
  organic: 'ground-organic',
  fill: 'ground-fill',
  sedimentary: 'ground-sedimentary',
  carbonate: 'ground-carbonate',
  crystalline: 'ground-crystalline',
  volcanic: 'ground-volcanic',
  rock: 'ground-rock',
};

/** The pattern of a ground: by its number where that is drawn, else by its family; blank where nothing is known. */
export function groundTile(ground: Ground | null): Tile {
  const family = ground !== null && Object.hasOwn(families, ground.class) ? ground.class : 'unknown';
  const byNumber = ground?.fgdc != null ? numbered[ground.fgdc] : undefined;
  const [width, height, shapes] = byNumber ?? families[family] ?? bare;
  const id = byNumber ? `ground-${ground?.fgdc}-${family}` : `ground-${family}`;
  return { id, width, height, tint: tints[family] ?? null, shapes };
}

/** Numbers of the standard that have a pattern of their own. */
export const drawnNumbers: readonly number[] = Object.keys(numbered).map(Number);
