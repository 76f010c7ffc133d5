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
import { centreDistance } from './train/centre-distance';
import { overlap } from './train/overlap';
import { printedLoadPath } from './train/printed-load-path';
import { stageKind, stepUp } from './train/stage-kind';
import { thrust } from './train/thrust';
import { weakestLink } from './train/weakest-link';
import { wideFace } from './train/wide-face';

export const gearRules: readonly Rule[] = [
  weakestLink,
  printedLoadPath,
  dutyProfile,
  loadSpectrum,
  missingLife,
  centreDistance,
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
