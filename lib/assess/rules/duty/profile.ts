// A duty whose move and travel, or whose torques, contradict each other.
import { printQuantity } from '@/lib/quantity/print';
import type { Judged, RawFinding, Rule } from '../rule';

export const dutyProfile: Rule = {
  key: 'duty-profile',
  label: 'Duty that contradicts itself',
  class: 'major',
  reason:
    'Loads, cycles, heat and energy all follow from the duty; where it contradicts itself they are right for no real use.',
  source: 'Kinematics of the move; definitions of the duty’s fields',
  judge: (judged) => [...moveFits(judged), ...torqueFits(judged)],
};

function moveFits({ document: { duty } }: Judged): RawFinding[] {
  if (duty.moveAngle <= duty.travel) return [];
  return [
    {
      at: 'duty.moveAngle',
      text: `The usual move of ${printQuantity(duty.moveAngle, 'deg')} is longer than the travel of ${printQuantity(duty.travel, 'deg')}.`,
      advice: 'Shorten the move or enter the whole travel.',
    },
  ];
}

function torqueFits({ document: { duty } }: Judged): RawFinding[] {
  if (duty.holdTorque <= duty.peakTorque) return [];
  return [
    {
      at: 'duty.holdTorque',
      text: `The holding torque of ${printQuantity(duty.holdTorque, 'N m')} is more than the peak torque of ${printQuantity(duty.peakTorque, 'N m')}.`,
      advice: 'The peak is the largest torque in service: enter it as such.',
    },
  ];
}
