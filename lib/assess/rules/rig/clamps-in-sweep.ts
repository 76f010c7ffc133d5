// Clamps that stand where the arm swings.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const clampsInSweep: Rule = {
  key: 'clamps-in-sweep',
  label: 'Clamps inside the sweep',
  class: 'minor',
  reason:
    'Clamps are retightened by hand, and hands then reach into the sweep; the arm may strike them as well.',
  source: 'Common practice, no source',
  judge: ({ design: { rig, duty }, document }) => {
    // An arm that weighs on its drive swings upright, away from the bench.
    if (document.duty.gravity || document.rig.held !== 'clamps' || rig.clampRadius === null) return [];
    if (rig.clampRadius.value >= duty.armLength.value) return [];
    return [
      {
        at: 'rig.clampRadius',
        text: `The clamps stand ${printSI(rig.clampRadius.value, 'mm')} from the axis; the arm sweeps ${printSI(duty.armLength.value, 'mm')}.`,
        advice: 'Set the clamps below the plane of the sweep, and retighten them only with the power off.',
      },
    ];
  },
};
