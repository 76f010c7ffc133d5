// A keep-clear radius shorter than the arm.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const reachInsideArm: Rule = {
  key: 'reach-inside-arm',
  label: 'Reach kept clear is shorter than the arm',
  class: 'critical',
  reason: 'Whoever stands where the arm swings is hit by it; what is on the arm flies further still.',
  source: 'Common practice; ISO 13855 and ISO 13857 give distances for machines (from memory)',
  judge: ({ checks, design, document }) => {
    const near = checks.get('rig.keptClear');
    if (document.rig.reach >= document.duty.armLength && near?.status === 'below')
      return [
        {
          at: 'rig.reach',
          class: 'minor',
          text: `Whoever stands at the edge of the ${printSI(design.rig.reach.value, 'mm')} kept clear can still reach into the swing of the arm: with an arm’s reach it would be ${printSI(near.demand, 'mm')}.`,
          advice: 'Keep clear at least the arm’s length and an arm’s reach more, or put a screen in between.',
        },
      ];
    if (document.rig.reach >= document.duty.armLength) return [];
    return [
      {
        at: 'rig.reach',
        text: `The arm reaches ${printSI(design.duty.armLength.value, 'mm')}; only ${printSI(design.rig.reach.value, 'mm')} are kept clear.`,
        advice: 'Keep clear at least the arm’s length and an arm’s reach more.',
      },
    ];
  },
};
