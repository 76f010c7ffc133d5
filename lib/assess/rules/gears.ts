// The rules on duty, train and teeth, in the order in which a reviewer would ask.
import { missingLife } from './duty/life';
import { dutyProfile } from './duty/profile';
import { loadSpectrum } from './duty/spectrum';
import type { Rule } from './rule';
import { apexGap } from './teeth/apex-gap';
import { bodyUnknown } from './teeth/body-unknown';
import { contactRatio } from './teeth/contact-ratio';
import { dryPair } from './teeth/dry-pair';
import { fastTeeth } from './teeth/fast-teeth';
import { fewTeeth } from './teeth/few-teeth';
import { interference } from './teeth/interference';
import { layers } from './teeth/layers';
import { teethNotAssessed } from './teeth/not-assessed';
import { pointed } from './teeth/pointed';
import { smallModule } from './teeth/small-module';
import { solidTeeth } from './teeth/solid-teeth';
import { specificSliding } from './teeth/specific-sliding';
import { thinRim } from './teeth/thin-rim';
import { undercut } from './teeth/undercut';
import { warmTeeth } from './teeth/warm-teeth';
import { beltLoadPath } from './train/belt-load-path';
import { beltLengthFits, beltMesh, beltOverlap, beltSmallPulley, beltTension } from './train/belts';
import { centreDistance } from './train/centre-distance';
import { internalFouling } from './train/internal-fouling';
import { overlap } from './train/overlap';
import { coaxial, planetAssembly, planetClearance, planetSharing } from './train/planets';
import { printedLoadPath } from './train/printed-load-path';
import { stageKind, stepUp } from './train/stage-kind';
import { thrust } from './train/thrust';
import { weakestLink } from './train/weakest-link';
import { wideFace } from './train/wide-face';
import { wormHeat, wormLocking } from './train/worms';

export const gearRules: readonly Rule[] = [
  weakestLink,
  printedLoadPath,
  beltLoadPath,
  dutyProfile,
  loadSpectrum,
  missingLife,
  centreDistance,
  coaxial,
  planetAssembly,
  planetClearance,
  internalFouling,
  beltOverlap,
  beltTension,
  beltMesh,
  beltSmallPulley,
  beltLengthFits,
  wormLocking,
  wormHeat,
  planetSharing,
  contactRatio,
  interference,
  undercut,
  pointed,
  teethNotAssessed,
  warmTeeth,
  layers,
  thinRim,
  bodyUnknown,
  thrust,
  stageKind,
  stepUp,
  fewTeeth,
  solidTeeth,
  smallModule,
  dryPair,
  fastTeeth,
  specificSliding,
  overlap,
  apexGap,
  wideFace,
];
