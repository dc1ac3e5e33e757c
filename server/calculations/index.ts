export { about as aboutDeliveredAir, deliveredAir } from './air/delivered-air.ts';
export { about as aboutPenetrationRate, penetrationRate } from './air/penetration-rate.ts';
export { about as aboutRateBreak, nearestDistance, rateBreak } from './air/rate-break.ts';
export { type Air, about as aboutStandardAtmosphere, standardAtmosphere } from './air/standard-atmosphere.ts';
export { about as aboutUpholeVelocity, upholeVelocity } from './air/uphole-velocity.ts';
export { about as aboutWaterLift, sparePressure } from './air/water-lift.ts';
export { about as aboutBuoyedWeight, buoyedWeight } from './casing/buoyed-weight.ts';
export { about as aboutCentralizerGaps, centralizerGaps, type Gap, widestGap } from './casing/centralizer-gaps.ts';
export {
  about as aboutElasticCollapse,
  elasticCollapse,
  STEEL_MODULUS,
  STEEL_POISSON,
} from './casing/elastic-collapse.ts';
export { about as aboutGradedCollapse, gradedCollapse } from './casing/graded-collapse.ts';
export { about as aboutHoistLoad, hoistLoad } from './casing/hoist-load.ts';
export {
  about as aboutHydrostaticPressure,
  type FluidColumn,
  hydrostaticPressure,
} from './casing/hydrostatic-pressure.ts';
export { about as aboutInsideDiameter, insideDiameter } from './casing/inside-diameter.ts';
export { about as aboutJointsTally, type Joints, jointsTally, type Tally } from './casing/joints-tally.ts';
export { about as aboutOvalCollapse, ovalCollapse, USUAL_OVALITY } from './casing/oval-collapse.ts';
export { about as aboutPipeGrades, type PipeGrade, pipeGrade } from './casing/pipe-grades.ts';
export { about as aboutPipeMass, pipeMass } from './casing/pipe-mass.ts';
export {
  about as aboutPipeSizes,
  metricNameOf,
  nominalOfOutside,
  outsideOfNominal,
  type PipeMaterial,
  wallOf,
} from './casing/pipe-sizes.ts';
export { about as aboutPlasticCollapse, PVC_MODULUS, PVC_POISSON, plasticCollapse } from './casing/plastic-collapse.ts';
export { about as aboutPlasticHeat, HOTTEST_PVC, warmPlasticCollapse, warmPvcShare } from './casing/plastic-heat.ts';
export { about as aboutPressureDifference, pressureDifference } from './casing/pressure-difference.ts';
export { about as aboutSdrWall, dimensionRatio, wallOfSdr } from './casing/sdr-wall.ts';
export { about as aboutSteelCollapse, steelCollapse } from './casing/steel-collapse.ts';
export { about as aboutYieldCollapse, yieldCollapse } from './casing/yield-collapse.ts';
export {
  BENTONITE_RELATIVE_DENSITY,
  CEMENT_RELATIVE_DENSITY,
  CEMENT_SACK,
  FOOT,
  INCH,
  LIMESTONE_CEMENT_RELATIVE_DENSITY,
  POUND,
  PSI,
  STANDARD_GRAVITY,
  STEEL_DENSITY,
  US_GALLON,
  WATER_DENSITY,
} from './constants.ts';
export { about as aboutDays, daysBetween, dueDate } from './dates/days.ts';
export { about as aboutHours, hoursBetween } from './dates/hours.ts';
export { about as aboutGranulesDose, granulesDose } from './disinfection/granules-dose.ts';
export {
  about as aboutLiquidDose,
  HYPOCHLORITE_5_RELATIVE_DENSITY,
  HYPOCHLORITE_12_RELATIVE_DENSITY,
  liquidDose,
} from './disinfection/liquid-dose.ts';
export { type Formula, known, type Outcome, refused } from './formula.ts';
export { about as aboutAnnulusArea, annulusArea } from './geometry/annulus-area.ts';
export { type AnnulusPiece, about as aboutAnnulusVolume, annulusVolume } from './geometry/annulus-volume.ts';
export { about as aboutFilledTop, type Filled, filledTop } from './geometry/filled-top.ts';
export { about as aboutMeanDiameterFilled, meanDiameterFilled } from './geometry/mean-diameter-filled.ts';
export { about as aboutAnnulusShare, annulusShare } from './grout/annulus-share.ts';
export { about as aboutBagsNeeded, bagsNeeded } from './grout/bags-needed.ts';
export { about as aboutBentoniteExtraWater, bentoniteExtraWater } from './grout/bentonite-extra-water.ts';
export { about as aboutBentoniteSlurry, bentoniteSlurryVolume, bentoniteSolids } from './grout/bentonite-slurry.ts';
export { about as aboutChipFill, CHIP_BULK_DENSITY, chipMass, chipVolume } from './grout/chip-fill.ts';
export { about as aboutMixDensity, mixDensity } from './grout/mix-density.ts';
export { about as aboutMixVolume, mixVolume, type Solid } from './grout/mix-volume.ts';
export { about as aboutPlacedShare, placedShare } from './grout/placed-share.ts';
export { about as aboutRequiredGrout, requiredGrout } from './grout/required-grout.ts';
export { about as aboutWaterCementRatio, waterCementRatio, waterOfRatio } from './grout/water-cement-ratio.ts';
export { about as aboutDistance, distanceBetween } from './place/distance.ts';
export {
  about as aboutUtm,
  type EarthPlace,
  type GridDatum,
  type GridPlace,
  type Hemisphere,
  placeOfUtm,
  utmOf,
} from './place/utm.ts';
export { about as aboutUtmZone, centralMeridian, zoneFits, zoneOfLongitude } from './place/utm-zone.ts';
export { about as aboutCasingStorage, casingStorageTime } from './pumping/casing-storage.ts';
export { about as aboutCooperJacob, type CooperJacob, cooperJacob, STRICT_U } from './pumping/cooper-jacob.ts';
export { type Reading, readingsWithin, type Window } from './pumping/readings.ts';
export { about as aboutRecovery, type Recovery, recovery } from './pumping/recovery.ts';
export { about as aboutSpecificCapacity, specificCapacity } from './pumping/specific-capacity.ts';
export { about as aboutStepDrawdowns, type StepReadings, stepDrawdowns } from './pumping/step-drawdowns.ts';
export { about as aboutStepTest, linearShare, type Step, type StepTest, stepTest } from './pumping/step-test.ts';
export {
  about as aboutStraightLine,
  type Line,
  type Point,
  rootMeanSquare,
  straightLine,
} from './pumping/straight-line.ts';
export { about as aboutTheisDrawdown, theisDrawdown } from './pumping/theis-drawdown.ts';
export { about as aboutTheisFit, type TheisFit, theisFit } from './pumping/theis-fit.ts';
export { about as aboutWellFunction, wellFunction } from './pumping/well-function.ts';
export {
  about as aboutEntranceVelocity,
  entranceVelocity,
  openAreaOf,
  screenLength,
} from './screen/entrance-velocity.ts';
export { about as aboutPackMass, PACK_BULK_DENSITY, packMass } from './screen/pack-mass.ts';
export { about as aboutLevels, belowTop, elevationOf } from './water/levels.ts';
export { about as aboutWaterColumn, waterColumn } from './water/water-column.ts';
