// No screen between people and the rig.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const noGuard: Rule = {
  key: 'no-guard',
  label: 'No screen',
  class: 'minor',
  reason: 'Printed teeth that burst leave as splinters; a reach kept clear does not stop them.',
  source: 'Common practice; EN 166 and ISO 14120 on impacts (from memory)',
  judge: (judged) => {
    const { rig, duty } = judged.document;
    if (rig.guard) return [];
    const energy = figureOf(judged, 'output.freeEnergy');
    const told = energy === null ? '' : ` In a runaway ${printSI(energy, 'J')} are in load and arm.`;
    const thrown = figureOf(judged, 'rig.thrown');
    const flies =
      thrown === null || thrown <= judged.design.rig.reach.value
        ? ''
        : ` What is flung off the tip lands up to ${printSI(thrown, 'm')} away, beyond the ${printSI(judged.design.rig.reach.value, 'm')} kept clear.`;
    return [
      {
        at: 'rig.guard',
        class: duty.consequence === 'harm' ? 'major' : 'minor',
        text: `No screen stands between people and the rig.${told}${flies}`,
        advice: 'Put a screen of polycarbonate in between and wear eye protection.',
      },
    ];
  },
};
