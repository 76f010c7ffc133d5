// A motor current limit below what the peak torque needs.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const currentLimitTooLow: Rule = {
  key: 'current-limit-too-low',
  label: 'Current limit below the peak',
  class: 'major',
  reason: 'The actuator gives way before it reaches the torque the duty asks for.',
  source: 'Linear motor model',
  judge: ({ checks }) => {
    const check = checks.get('drive.motorCurrent');
    if (check?.status !== 'below') return [];
    return [
      {
        at: 'drive.motorCurrentLimit',
        text: `The peak torque needs ${printSI(check.demand, 'A')} in the motor; the limit is ${printSI(check.capacity, 'A')}.`,
        advice: 'Raise the limit as far as motor and train allow, or lower the peak torque.',
      },
    ];
  },
};
