export { about as aboutPenetrationRate, penetrationRate } from './air/penetration-rate.ts';
export {
  about as aboutUpholeVelocity,
  type SlowestPlace,
  slowestUpholeVelocity,
  upholeVelocity,
} from './air/uphole-velocity.ts';
export { about as aboutCentralizerGaps, centralizerGaps, type Gap, widestGap } from './casing/centralizer-gaps.ts';
export { about as aboutInsideDiameter, insideDiameter } from './casing/inside-diameter.ts';
export { about as aboutJointsTally, jointsTally, type Tally } from './casing/joints-tally.ts';
export {
  about as aboutPipeSizes,
  nominalOfOutside,
  nominalSizes,
  outsideOfNominal,
  type PipeMaterial,
  SDR_SERIES,
  schedulesOf,
  wallOf,
} from './casing/pipe-sizes.ts';
export { about as aboutSdrWall, dimensionRatio, wallOfSdr } from './casing/sdr-wall.ts';
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
export { type Formula, finite, known, type Outcome, refused } from './formula.ts';
export { about as aboutAnnulusArea, annulusArea } from './geometry/annulus-area.ts';
export {
  type AnnulusPiece,
  about as aboutAnnulusPieces,
  annulusPieces,
  type DiameterSpan,
} from './geometry/annulus-pieces.ts';
export { about as aboutAnnulusVolume, annulusVolume } from './geometry/annulus-volume.ts';
export { about as aboutFilledTop, type Fill, filledTop } from './geometry/filled-top.ts';
export { about as aboutMeanDiameterFilled, meanDiameterFilled } from './geometry/mean-diameter-filled.ts';
export { about as aboutAnnulusShare, annulusShare } from './grout/annulus-share.ts';
export { about as aboutBagsNeeded, bagsNeeded } from './grout/bags-needed.ts';
export { about as aboutBentoniteExtraWater, bentoniteExtraWater } from './grout/bentonite-extra-water.ts';
export { about as aboutBentoniteSlurry, bentoniteSlurryVolume, bentoniteSolids } from './grout/bentonite-slurry.ts';
export { about as aboutChipFill, CHIP_BULK_DENSITY, chipMass, chipVolume } from './grout/chip-fill.ts';
export { about as aboutMixDensity, mixDensity } from './grout/mix-density.ts';
export { about as aboutMixVolume, mixVolume, type Solid } from './grout/mix-volume.ts';
export { about as aboutRequiredGrout, requiredGrout } from './grout/required-grout.ts';
export { about as aboutWaterCementRatio, waterCementRatio, waterOfRatio } from './grout/water-cement-ratio.ts';
export { about as aboutLevels, belowGround, belowTop, depthOfElevation, elevationOf } from './water/levels.ts';
export { about as aboutWaterColumn, waterColumn } from './water/water-column.ts';
