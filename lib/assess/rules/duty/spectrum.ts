// A load spectrum that contradicts itself or the peak of the duty.
import { printNumber, printQuantity } from '@/lib/quantity/print';
import type { Judged, RawFinding, Rule } from '../rule';

/** Shares are typed in per cent; what rounding adds is no contradiction. */
const rounding = 1e-6;

export const loadSpectrum: Rule = {
  key: 'load-spectrum',
  label: 'Load spectrum that contradicts the duty',
  class: 'major',
  reason:
    'Life is worked from the spectrum, overload from the peak. Where the two do not fit together, one of them is judged for a use that is not meant.',
  source: 'Definitions of the duty’s fields',
  judge: (judged) => [...abovePeak(judged), ...moreThanAll(judged)],
};

function abovePeak({ document: { duty } }: Judged): RawFinding[] {
  return duty.loads
    .filter(({ share, torque }) => share > 0 && torque > duty.peakTorque)
    .map(({ id, torque }) => ({
      at: `duty.loads.${id}.torque`,
      text: `A load of the spectrum asks for ${printQuantity(torque, 'N m')}, more than the peak torque of ${printQuantity(duty.peakTorque, 'N m')}.`,
      advice: 'The peak is the largest torque in service: enter it as such.',
    }));
}

function moreThanAll({ document: { duty } }: Judged): RawFinding[] {
  const sum = duty.loads.reduce((all, { share }) => all + share, 0);
  const [first] = duty.loads;
  if (first === undefined || sum <= 100 + rounding) return [];
  return [
    {
      at: `duty.loads.${first.id}.share`,
      text: `The shares of the load spectrum add up to ${printNumber(sum)} % of the moves; each is counted as entered.`,
      advice: 'Bring the shares to 100 % or less; what they leave is taken at the peak torque.',
    },
  ];
}
