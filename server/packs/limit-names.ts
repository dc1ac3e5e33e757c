interface About {
  /** SI unit of the limit's value. */
  readonly unit: string;
  readonly meaning: string;
}

const about = (unit: string, meaning: string): About => ({ unit, meaning });

/** Every limit that a pack may set. */
export const limitTable = {
  'grout-allowance': about('1', 'grout beyond the bare annulus, as a share of it'),
  'grout-surplus': about('1', 'grout, as a multiple of the annulus, beyond which it is asked where it went'),
  'bags-volume-tolerance': about('1', 'how far bags and volume may disagree, as a share'),
  'water-cement-most': about('1', 'most water to cement, by mass'),
  'bentonite-water-each': about('1', 'what the ratio of water to cement may grow by for each whole of bentonite'),
  'bentonite-share-most': about('1', 'most bentonite in cement, as a share of its mass'),
  'solids-least': about('1', 'least solids in a bentonite slurry, as a share of its mass'),
  'oversize-least': about('m', 'how much wider the hole must be than the casing that is grouted in it'),
  'set-time-cement': about('s', 'least time between placing cement and drilling on'),
  'stickup-least': about('m', 'least height of the casing above ground'),
  'casing-depth-least': about('m', 'least depth of the foot of the casing'),
  'casing-size-least': about('m', 'least nominal diameter of the casing'),
  'wall-least': about('m', 'least thickness of the wall of the casing'),
  'rock-seat-least': about('m', 'how far the casing must go into rock'),
  'seal-depth-least': about('m', 'least depth of the foot of the annular seal'),
  'shoe-beyond': about('m', 'depth of the foot beyond which the casing must have a shoe'),
  'gravity-depth-most': about('m', 'most depth to which grout may be placed by gravity'),
  'tremie-foot-most': about('m', 'most distance of the tremie pipe’s foot from the bottom, when placing begins'),
  'chip-share-most': about('1', 'most size of bentonite chips, as a share of the thickness of the annulus'),
  'montmorillonite-least': about('1', 'least sodium montmorillonite in bentonite, as a share of its mass'),
  'bentonite-in-rock-most': about('m', 'how far bentonite grout may reach below the top of rock'),
  'native-seal-most': about('m', 'most length of annulus that cuttings or native ground may seal'),
  'well-depth-least': about('m', 'depth that a well should have at least'),
  'well-depth-never-under': about('m', 'depth that a well must never fall short of'),
  'chlorine-least': about('kg/m3', 'least chlorine in disinfection'),
  'chlorine-most': about('kg/m3', 'most chlorine in disinfection'),
  'chlorine-contact-least': about('s', 'least time for which the chlorine must stand'),
  'test-time-least': about('s', 'least time for which a test of the yield must run'),
  'centralizer-gap-most': about('m', 'most distance between two centralizers'),
  'centralizer-shoe-most': about('m', 'most distance between the lowest centralizer and the shoe'),
  'centralizer-set-least': about('1', 'least centralizers that stand together at one depth'),
  'centralizer-string-least': about('m', 'length from which a string needs centralizers'),
  'uphole-velocity-least': about('m/s', 'least velocity of air up the hole'),
  'uphole-velocity-most': about('m/s', 'most velocity of air up the hole'),
  'air-rating-loss': about('1', 'what a compressor gives less than its rating, as a share'),
  'joints-difference-most': about('m', 'how far the joints and the length of the string may disagree'),
  'shoe-foot-difference-most': about('m', 'how far the shoe and the foot of the string may disagree'),
  'foot-difference-most': about('m', 'how far the feet of strata, hole and strings may disagree'),
  'rate-break-ratio-least': about('1', 'change of the rate of drilling that counts as a break'),
  'rate-break-rods-least': about('1', 'rods over which a break must last'),
  'test-wrong-way-level-least': about('m', 'movement of a level the wrong way that is told'),
  'test-wrong-way-share-least': about('1', 'that movement, as a share of the drawdown'),
  'static-first-reading-most': about('m', 'how far the static level and the first reading may disagree'),
  'drawdown-volume-ratio-most': about('1', 'water that the drawdown means, to what was pumped'),
  'grout-settled-most': about('m', 'how far grout may settle without a top-up'),
  'pack-above-screen-least': about('m', 'least height of the filter pack above the screen'),
  'pack-above-screen-most': about('m', 'most height of the filter pack above the screen'),
  'pack-kept-back-least': about('1', 'least share of the filter pack that the slots keep back'),
  'pack-grain-ratio-least': about('1', 'least grain of the pack, as a multiple of that of the formation'),
  'pack-grain-ratio-most': about('1', 'most grain of the pack, as a multiple of that of the formation'),
  'entrance-velocity-most': about('m/s', 'most velocity of water through the slots'),
} as const satisfies Readonly<Record<string, About>>;

export type LimitName = keyof typeof limitTable;

export const limitNames = Object.keys(limitTable) as [LimitName, ...LimitName[]];
