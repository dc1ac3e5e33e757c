// Made by server/rules/generate.ts from the files in server/rules/rules; do not edit.
import type { Rule } from './rule.ts';
import { rule as abandonmentLeavesOpen } from './rules/abandonment-leaves-open.ts';
import { rule as airCannotLift } from './rules/air-cannot-lift.ts';
import { rule as allowSilencesNothing } from './rules/allow-silences-nothing.ts';
import { rule as allowUnknownRule } from './rules/allow-unknown-rule.ts';
import { rule as allowWithoutReason } from './rules/allow-without-reason.ts';
import { rule as annulusThin } from './rules/annulus-thin.ts';
import { rule as approximateContactAtSeal } from './rules/approximate-contact-at-seal.ts';
import { rule as badDate } from './rules/bad-date.ts';
import { rule as badRatio } from './rules/bad-ratio.ts';
import { rule as badTime } from './rules/bad-time.ts';
import { rule as bagsVolumeDisagree } from './rules/bags-volume-disagree.ts';
import { rule as bedrockWithoutKind } from './rules/bedrock-without-kind.ts';
import { rule as bentoniteInRock } from './rules/bentonite-in-rock.ts';
import { rule as bentoniteShareHigh } from './rules/bentonite-share-high.ts';
import { rule as beyondTheBottom } from './rules/beyond-the-bottom.ts';
import { rule as bitWiderThanHole } from './rules/bit-wider-than-hole.ts';
import { rule as bitWiderThanString } from './rules/bit-wider-than-string.ts';
import { rule as casingMayCollapse } from './rules/casing-may-collapse.ts';
import { rule as casingMayFloat } from './rules/casing-may-float.ts';
import { rule as casingNarrowForRock } from './rules/casing-narrow-for-rock.ts';
import { rule as casingNotInRock } from './rules/casing-not-in-rock.ts';
import { rule as casingTooShort } from './rules/casing-too-short.ts';
import { rule as centralizerGap } from './rules/centralizer-gap.ts';
import { rule as centralizerNoneNearShoe } from './rules/centralizer-none-near-shoe.ts';
import { rule as centralizerOutside } from './rules/centralizer-outside.ts';
import { rule as centralizerSetSmall } from './rules/centralizer-set-small.ts';
import { rule as chipsTooLarge } from './rules/chips-too-large.ts';
import { rule as contactReadUnderFoam } from './rules/contact-read-under-foam.ts';
import { rule as cuttingsAsSeal } from './rules/cuttings-as-seal.ts';
import { rule as datesOutOfOrder } from './rules/dates-out-of-order.ts';
import { rule as decimalComma } from './rules/decimal-comma.ts';
import { rule as disinfectionMissing } from './rules/disinfection-missing.ts';
import { rule as disinfectionOverStrength } from './rules/disinfection-over-strength.ts';
import { rule as disinfectionTooShort } from './rules/disinfection-too-short.ts';
import { rule as disinfectionUnderStrength } from './rules/disinfection-under-strength.ts';
import { rule as drawdownFasterThanPumped } from './rules/drawdown-faster-than-pumped.ts';
import { rule as drilledOnTooSoon } from './rules/drilled-on-too-soon.ts';
import { rule as elapsedTimeForm } from './rules/elapsed-time-form.ts';
import { rule as entranceVelocityHigh } from './rules/entrance-velocity-high.ts';
import { rule as fillOverlap } from './rules/fill-overlap.ts';
import { rule as flowingWithoutShutIn } from './rules/flowing-without-shut-in.ts';
import { rule as gallonNotNamed } from './rules/gallon-not-named.ts';
import { rule as gravityPlacementTooDeep } from './rules/gravity-placement-too-deep.ts';
import { rule as gravityThroughWater } from './rules/gravity-through-water.ts';
import { rule as groutFarOver } from './rules/grout-far-over.ts';
import { rule as groutIntervalOpen } from './rules/grout-interval-open.ts';
import { rule as groutSettled } from './rules/grout-settled.ts';
import { rule as groutShort } from './rules/grout-short.ts';
import { rule as historicalPack } from './rules/historical-pack.ts';
import { rule as holeBelowString } from './rules/hole-below-string.ts';
import { rule as holeWiderBelow } from './rules/hole-wider-below.ts';
import { rule as inchesAsDecimals } from './rules/inches-as-decimals.ts';
import { rule as intakeAboveLevel } from './rules/intake-above-level.ts';
import { rule as intervalGap } from './rules/interval-gap.ts';
import { rule as intervalOverlap } from './rules/interval-overlap.ts';
import { rule as intervalReversed } from './rules/interval-reversed.ts';
import { rule as intervalWithoutDash } from './rules/interval-without-dash.ts';
import { rule as jointsDoNotAddUp } from './rules/joints-do-not-add-up.ts';
import { rule as levelAboveGroundWithoutControl } from './rules/level-above-ground-without-control.ts';
import { rule as levelBelowBottom } from './rules/level-below-bottom.ts';
import { rule as lineTooLong } from './rules/line-too-long.ts';
import { rule as locationIncomplete } from './rules/location-incomplete.ts';
import { rule as magnitudeFitsAnotherUnit } from './rules/magnitude-fits-another-unit.ts';
import { rule as misplacedKeyword } from './rules/misplaced-keyword.ts';
import { rule as missingDepth } from './rules/missing-depth.ts';
import { rule as missingLabel } from './rules/missing-label.ts';
import { rule as missingShoe } from './rules/missing-shoe.ts';
import { rule as missingValue } from './rules/missing-value.ts';
import { rule as mixTooWet } from './rules/mix-too-wet.ts';
import { rule as mixedUnits } from './rules/mixed-units.ts';
import { rule as montmorilloniteLow } from './rules/montmorillonite-low.ts';
import { rule as nearKeyword } from './rules/near-keyword.ts';
import { rule as noPlace } from './rules/no-place.ts';
import { rule as noSection } from './rules/no-section.ts';
import { rule as nominalOrOutside } from './rules/nominal-or-outside.ts';
import { rule as notDeepening } from './rules/not-deepening.ts';
import { rule as nothingSaid } from './rules/nothing-said.ts';
import { rule as numberOutOfShape } from './rules/number-out-of-shape.ts';
import { rule as openHoleInLooseGround } from './rules/open-hole-in-loose-ground.ts';
import { rule as packGrainUnlikeFormation } from './rules/pack-grain-unlike-formation.ts';
import { rule as packNotAboveScreen } from './rules/pack-not-above-screen.ts';
import { rule as periodRunsBackwards } from './rules/period-runs-backwards.ts';
import { rule as placeOffRange } from './rules/place-off-range.ts';
import { rule as placeWithoutDatum } from './rules/place-without-datum.ts';
import { rule as rateBreak } from './rules/rate-break.ts';
import { rule as recordDue } from './rules/record-due.ts';
import { rule as recordIncomplete } from './rules/record-incomplete.ts';
import { rule as rockSeatShort } from './rules/rock-seat-short.ts';
import { rule as screenAcrossSeal } from './rules/screen-across-seal.ts';
import { rule as screenWithoutPlug } from './rules/screen-without-plug.ts';
import { rule as sealShorterThanPack } from './rules/seal-shorter-than-pack.ts';
import { rule as secondKeyword } from './rules/second-keyword.ts';
import { rule as secondValue } from './rules/second-value.ts';
import { rule as shoeNotAtFoot } from './rules/shoe-not-at-foot.ts';
import { rule as shoeRequiredByPack } from './rules/shoe-required-by-pack.ts';
import { rule as slotWideForPack } from './rules/slot-wide-for-pack.ts';
import { rule as slotWordMissing } from './rules/slot-word-missing.ts';
import { rule as solidsTooLow } from './rules/solids-too-low.ts';
import { rule as sourceTooNear } from './rules/source-too-near.ts';
import { rule as staticAgainstFirstReading } from './rules/static-against-first-reading.ts';
import { rule as stickupLow } from './rules/stickup-low.ts';
import { rule as strataShortOfBottom } from './rules/strata-short-of-bottom.ts';
import { rule as strayMark } from './rules/stray-mark.ts';
import { rule as stringWiderThanHole } from './rules/string-wider-than-hole.ts';
import { rule as testLevelsWrongWay } from './rules/test-levels-wrong-way.ts';
import { rule as testReadingsMissing } from './rules/test-readings-missing.ts';
import { rule as testTooShort } from './rules/test-too-short.ts';
import { rule as timesDoNotFit } from './rules/times-do-not-fit.ts';
import { rule as tremieFootHigh } from './rules/tremie-foot-high.ts';
import { rule as twoPoints } from './rules/two-points.ts';
import { rule as unclosedQuote } from './rules/unclosed-quote.ts';
import { rule as unexpectedDepth } from './rules/unexpected-depth.ts';
import { rule as unknownFileUnit } from './rules/unknown-file-unit.ts';
import { rule as unknownKeyword } from './rules/unknown-keyword.ts';
import { rule as unknownPack } from './rules/unknown-pack.ts';
import { rule as unknownSection } from './rules/unknown-section.ts';
import { rule as unknownTerm } from './rules/unknown-term.ts';
import { rule as unknownUnit } from './rules/unknown-unit.ts';
import { rule as unknownUseOrStatus } from './rules/unknown-use-or-status.ts';
import { rule as unreadable } from './rules/unreadable.ts';
import { rule as unresolvedQuestion } from './rules/unresolved-question.ts';
import { rule as upholeVelocityLow } from './rules/uphole-velocity-low.ts';
import { rule as wallTooThin } from './rules/wall-too-thin.ts';
import { rule as waterBehindCasing } from './rules/water-behind-casing.ts';
import { rule as waterBeyondBottom } from './rules/water-beyond-bottom.ts';
import { rule as wellTooShallow } from './rules/well-too-shallow.ts';
import { rule as wrongKind } from './rules/wrong-kind.ts';

/** Every rule, by id. */
export const rules: readonly Rule[] = [
  abandonmentLeavesOpen,
  airCannotLift,
  allowSilencesNothing,
  allowUnknownRule,
  allowWithoutReason,
  annulusThin,
  approximateContactAtSeal,
  badDate,
  badRatio,
  badTime,
  bagsVolumeDisagree,
  bedrockWithoutKind,
  bentoniteInRock,
  bentoniteShareHigh,
  beyondTheBottom,
  bitWiderThanHole,
  bitWiderThanString,
  casingMayCollapse,
  casingMayFloat,
  casingNarrowForRock,
  casingNotInRock,
  casingTooShort,
  centralizerGap,
  centralizerNoneNearShoe,
  centralizerOutside,
  centralizerSetSmall,
  chipsTooLarge,
  contactReadUnderFoam,
  cuttingsAsSeal,
  datesOutOfOrder,
  decimalComma,
  disinfectionMissing,
  disinfectionOverStrength,
  disinfectionTooShort,
  disinfectionUnderStrength,
  drawdownFasterThanPumped,
  drilledOnTooSoon,
  elapsedTimeForm,
  entranceVelocityHigh,
  fillOverlap,
  flowingWithoutShutIn,
  gallonNotNamed,
  gravityPlacementTooDeep,
  gravityThroughWater,
  groutFarOver,
  groutIntervalOpen,
  groutSettled,
  groutShort,
  historicalPack,
  holeBelowString,
  holeWiderBelow,
  inchesAsDecimals,
  intakeAboveLevel,
  intervalGap,
  intervalOverlap,
  intervalReversed,
  intervalWithoutDash,
  jointsDoNotAddUp,
  levelAboveGroundWithoutControl,
  levelBelowBottom,
  lineTooLong,
  locationIncomplete,
  magnitudeFitsAnotherUnit,
  misplacedKeyword,
  missingDepth,
  missingLabel,
  missingShoe,
  missingValue,
  mixTooWet,
  mixedUnits,
  montmorilloniteLow,
  nearKeyword,
  noPlace,
  noSection,
  nominalOrOutside,
  notDeepening,
  nothingSaid,
  numberOutOfShape,
  openHoleInLooseGround,
  packGrainUnlikeFormation,
  packNotAboveScreen,
  periodRunsBackwards,
  placeOffRange,
  placeWithoutDatum,
  rateBreak,
  recordDue,
  recordIncomplete,
  rockSeatShort,
  screenAcrossSeal,
  screenWithoutPlug,
  sealShorterThanPack,
  secondKeyword,
  secondValue,
  shoeNotAtFoot,
  shoeRequiredByPack,
  slotWideForPack,
  slotWordMissing,
  solidsTooLow,
  sourceTooNear,
  staticAgainstFirstReading,
  stickupLow,
  strataShortOfBottom,
  strayMark,
  stringWiderThanHole,
  testLevelsWrongWay,
  testReadingsMissing,
  testTooShort,
  timesDoNotFit,
  tremieFootHigh,
  twoPoints,
  unclosedQuote,
  unexpectedDepth,
  unknownFileUnit,
  unknownKeyword,
  unknownPack,
  unknownSection,
  unknownTerm,
  unknownUnit,
  unknownUseOrStatus,
  unreadable,
  unresolvedQuestion,
  upholeVelocityLow,
  wallTooThin,
  waterBehindCasing,
  waterBeyondBottom,
  wellTooShallow,
  wrongKind,
];
