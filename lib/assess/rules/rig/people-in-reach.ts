// People within the arm's reach while the drive has power.
import { bodyRegions } from '@/lib/catalog/contact-limits';
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type Rule } from '../rule';

const at = 'rig.peopleInReach';

export const peopleInReach: Rule = {
  key: 'people-in-reach',
  label: 'People within reach',
  class: 'critical',
  reason:
    'A high-power actuator clamps and strikes far harder than a person bears; only distance, a screen and power taken away protect.',
  source:
    'ISO/TS 15066:2016 Annex A (from memory) for the forces; ISO 12100 and local rules for who may decide; common practice',
  judge: (judged) => {
    const people = judged.document.rig.peopleInReach;
    const worst = greatest(judged);
    if (people === 'nobody') return [];
    const limit = bodyRegions[people === 'body' ? 'face' : 'hand'].force;
    if (people === null) {
      const { duty, output } = judged.document;
      if (worst === null ? duty.armLength === 0 && output.stopRadius === null : worst <= limit) return [];
      return [
        {
          at,
          class: 'minor',
          text: `Who is within reach of the arm while it has power is not entered.${told(worst, limit)}`,
          advice: 'Keep everyone out of reach while it has power, and enter so.',
        },
      ];
    }
    const whom = people === 'hands' ? 'Hands are' : 'The whole body is';
    return [
      {
        at,
        class: worst !== null && worst <= limit ? 'major' : 'critical',
        text: `${whom} within reach of the arm while it has power.${told(worst, limit)}`,
        advice:
          'Keep everyone out of reach while it has power; where that cannot be, a qualified person assesses the risk under local rules.',
      },
    ];
  },
};

/** The greater of the forces at the tip and at the stop, N; null when neither is known. */
function greatest(judged: Judged): number | null {
  const forces = ['rig.tipForce', 'output.stopForce'].flatMap((key) => figureOf(judged, key) ?? []);
  return forces.length === 0 ? null : Math.max(...forces);
}

function told(worst: number | null, limit: number): string {
  if (worst === null) return ' With what force it clamps is not known.';
  const beside = worst > limit ? 'above' : 'within';
  return ` It can clamp with ${printSI(worst, 'N')}, ${beside} the ${printSI(limit, 'N')} named for lasting contact.`;
}
