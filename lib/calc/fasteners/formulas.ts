// Every formula of the fasteners shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import { caseFormulas } from './case';
import * as group from './group';
import * as joint from './joint';
import * as preload from './preload';
import { bossPullOut, lowPullOut, warmPullOut } from './print';
import { stressFormulas } from './stress';
import * as thread from './thread';

export const fastenersFormulas: readonly AnyFormula[] = [
  thread.pitchDiameter,
  thread.minorDiameter,
  thread.stressArea,
  thread.screwStripArea,
  thread.nutStripArea,
  thread.strippingForce,
  thread.leastEngagement,
  preload.proofForce,
  preload.preload,
  preload.preloadLeft,
  preload.tighteningTorque,
  preload.preloadOfTorque,
  preload.torqueByFriction,
  preload.preloadByFriction,
  preload.torqueFactor,
  joint.screwStiffness,
  joint.memberStiffness,
  joint.jointShare,
  joint.screwForce,
  joint.clampingForce,
  joint.separationFactor,
  joint.loadFactor,
  joint.proofFactor,
  group.groupTorque,
  group.directForce,
  group.turningForce,
  group.fastenerForce,
  group.fastenerShear,
  group.frictionTorque,
  group.relievedFrictionTorque,
  group.frictionForce,
  lowPullOut,
  warmPullOut,
  bossPullOut,
  ...stressFormulas,
  ...caseFormulas,
];
