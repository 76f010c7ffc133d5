// A design on which no rule beside the teeth fires: each rule's test breaks one thing of it.
import type { Design } from '@/lib/design/document';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { changed } from './worked';

export const sound: Design = changed(swingArm, {
  'duty.consequence': 'harmless',
  'duty.outputSpeed': 90,
  'supply.kind': 'lifepo4',
  'supply.cells': 7,
  'supply.cutoff': 2.9,
  'supply.disconnect': 'contactor',
  'supply.cellResistance': 4,
  'drive.regenCurrentLimit': 4,
  'drive.prechargeResistor': 10,
  'rig.holdTorque': 250,
  'rig.guard': true,
  'rig.peopleInReach': 'nobody',
});
