// Commutation without a rotor sensor cannot hold at rest.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const sensorlessHold: Rule = {
  key: 'sensorless-hold',
  label: 'Holding without a rotor sensor',
  class: 'major',
  reason:
    'A drive that finds the rotor by its back-EMF sees nothing at rest: it loses steps, jerks or lets go.',
  source: 'Common practice, no source; back-EMF is proportional to speed',
  judge: ({ document: { drive, duty } }) => {
    const blind = drive.commutation === 'sensorlessBlock' || drive.commutation === 'sensorlessFoc';
    if (!blind || duty.holdTorque <= 0) return [];
    return [
      {
        at: 'drive.commutation',
        class: duty.gravity && duty.consequence === 'harm' ? 'critical' : 'major',
        text: `${printSI(duty.holdTorque, 'N m')} are to be held at rest, but the drive has no rotor sensor.`,
        advice: 'Fit a rotor sensor, or hold by a brake.',
      },
    ];
  },
};
