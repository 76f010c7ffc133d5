// Every formula of hubs, for the list of the shafts shelf.
import type { AnyFormula } from '../../formula';
import * as clamp from './clamp';
import * as flange from './flange';
import * as friction from './friction';
import { hubTorque, shearStrength } from './load';
import * as polygon from './polygon';
import * as positive from './positive';
import * as press from './press';
import * as spline from './spline';

export const hubsFormulas: readonly AnyFormula[] = [
  hubTorque,
  shearStrength,
  positive.keyShearTorque,
  positive.keyPressureTorque,
  positive.keyLength,
  positive.keyseatTorque,
  positive.keyPressure,
  positive.flatWidth,
  positive.flatTorque,
  polygon.polygonFlat,
  polygon.flatsTorque,
  polygon.profileShare,
  polygon.p3gTorque,
  polygon.p4cEccentricity,
  polygon.p4cTorque,
  polygon.polygonWallTorque,
  polygon.polygonTorsion,
  positive.splineTorque,
  spline.splineToothWidth,
  spline.splineShearTorque,
  flange.screwRadius,
  flange.flangeShearTorque,
  flange.flangeBearingTorque,
  friction.setScrewGrip,
  friction.setScrewForce,
  friction.setScrewTorque,
  clamp.clampForce,
  clamp.clampBorePressure,
  friction.clampHubTorque,
  press.warmInterference,
  friction.pressFitPressure,
  press.relaxedPressure,
  friction.hubHoopStress,
  friction.hubEquivalentStress,
  friction.pressFitTorque,
  friction.pressFitForce,
];
