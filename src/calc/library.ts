import { axleShare } from './axle-share.ts';
import { bedTwist } from './bed-twist.ts';
import { boltPreload } from './bolt-preload.ts';
import { boltProofLoad } from './bolt-proof-load.ts';
import { boltStressArea } from './bolt-stress-area.ts';
import { boltStressAreaUnified } from './bolt-stress-area-unified.ts';
import { boltTension } from './bolt-tension.ts';
import { boltTorque } from './bolt-torque.ts';
import { bookMass } from './book-mass.ts';
import { brakeBalance } from './brake-balance.ts';
import { brakeForce } from './brake-force.ts';
import { brakeLinePressure } from './brake-line-pressure.ts';
import type { Calculation } from './calculation.ts';
import { cgAcross } from './cg-across.ts';
import { cgAlong } from './cg-along.ts';
import { cgHeightRaisedAxle } from './cg-height-raised-axle.ts';
import { coilRate } from './coil-rate.ts';
import { compressionRatio } from './compression-ratio.ts';
import { compressionSpread } from './compression-spread.ts';
import { cornerShare } from './corner-share.ts';
import { crossWeight } from './cross-weight.ts';
import { dampingRatio } from './damping-ratio.ts';
import { displacement } from './displacement.ts';
import { dryFilm } from './dry-film.ts';
import { eccentricity } from './eccentricity.ts';
import { enginePower } from './engine-power.ts';
import { engineSpeed } from './engine-speed.ts';
import { fuelUsed } from './fuel-used.ts';
import { gradeability } from './gradeability.ts';
import { idealBrakeBalance } from './ideal-brake-balance.ts';
import { insulationLeak } from './insulation-leak.ts';
import { jointAngle } from './joint-angle.ts';
import { jointCancellation } from './joint-cancellation.ts';
import { jointFluctuation } from './joint-fluctuation.ts';
import { leafRate } from './leaf-rate.ts';
import { loadTransfer } from './load-transfer.ts';
import { overallRatio } from './overall-ratio.ts';
import { paintCoverage } from './paint-coverage.ts';
import { paintCoveragePractical } from './paint-coverage-practical.ts';
import { paintNeeded } from './paint-needed.ts';
import { pedalRatio } from './pedal-ratio.ts';
import { placeDeviation } from './place-deviation.ts';
import { placeLeast } from './place-least.ts';
import { placeMean } from './place-mean.ts';
import { placeSpread } from './place-spread.ts';
import { powerToMass } from './power-to-mass.ts';
import { rideFrequency } from './ride-frequency.ts';
import { rideRate } from './ride-rate.ts';
import { roadSpeed } from './road-speed.ts';
import { rollingRadiusLoss } from './rolling-radius-loss.ts';
import { runout } from './runout.ts';
import { sheetLoss } from './sheet-loss.ts';
import { shelfDeflection } from './shelf-deflection.ts';
import { sideShare } from './side-share.ts';
import { spindleAlignment } from './spindle-alignment.ts';
import { spindleAlignmentAngle } from './spindle-alignment-angle.ts';
import { squarenessAngle } from './squareness-angle.ts';
import { squarenessDiagonals } from './squareness-diagonals.ts';
import { staticDeflection } from './static-deflection.ts';
import { taperTwoCollars } from './taper-two-collars.ts';
import { tyreDiameter } from './tyre-diameter.ts';
import { voltDropShare } from './volt-drop-share.ts';
import { wetFilm } from './wet-film.ts';
import { wheelRate } from './wheel-rate.ts';

/** Every calculation that a spec may name, by name. */
export const library: ReadonlyMap<string, Calculation> = new Map(
  [
    // sheet
    placeMean,
    placeLeast,
    placeSpread,
    placeDeviation,
    sheetLoss,
    // weighing
    axleShare,
    cornerShare,
    crossWeight,
    sideShare,
    cgAlong,
    cgAcross,
    cgHeightRaisedAxle,
    // frame
    squarenessDiagonals,
    squarenessAngle,
    // ride
    wheelRate,
    rideRate,
    rideFrequency,
    staticDeflection,
    dampingRatio,
    // springs
    leafRate,
    coilRate,
    // tyres and gearing
    tyreDiameter,
    rollingRadiusLoss,
    overallRatio,
    engineSpeed,
    roadSpeed,
    gradeability,
    // driveline
    jointAngle,
    jointFluctuation,
    jointCancellation,
    // brakes
    brakeLinePressure,
    pedalRatio,
    brakeForce,
    brakeBalance,
    loadTransfer,
    idealBrakeBalance,
    // engine
    displacement,
    compressionRatio,
    compressionSpread,
    enginePower,
    // bolts
    boltStressArea,
    boltStressAreaUnified,
    boltProofLoad,
    boltPreload,
    boltTorque,
    boltTension,
    // paint
    paintCoverage,
    paintCoveragePractical,
    wetFilm,
    dryFilm,
    paintNeeded,
    // machine geometry
    spindleAlignment,
    spindleAlignmentAngle,
    bedTwist,
    taperTwoCollars,
    runout,
    eccentricity,
    // use
    powerToMass,
    fuelUsed,
    // electrics
    voltDropShare,
    insulationLeak,
    // shelves
    bookMass,
    shelfDeflection,
  ].map((calculation) => [calculation.name, calculation]),
);
