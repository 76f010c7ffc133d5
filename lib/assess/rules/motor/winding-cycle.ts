// A duty whose moves and rests alone, repeated, bring the winding too near its limit.
import { printNumber, printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const windingCycle: Rule = {
  key: 'winding-cycle',
  label: 'Winding warmed by the duty itself',
  class: 'major',
  reason:
    'A test of a few moves says nothing of it: the case takes many minutes to settle, and warm copper loses more than cold.',
  source: 'Three warm lumps solved exactly over the cycle, to its periodic state; derived',
  judge: ({ checks, figures, document }) => {
    const check = checks.get('motor.cycle');
    if (check?.status !== 'below') return [];
    const peak = figures.get('motor.cycleTemperature');
    const limit = `${printNumber(document.motor.windingLimit)} °C`;
    return [
      {
        at: 'motor.cycleTemperature',
        class: (check.factor ?? 0) < 1 ? 'critical' : 'major',
        text:
          peak?.value == null
            ? `Moves and rests repeated never settle: the winding passes its limit of ${limit} and goes on.`
            : `Moves and rests repeated bring the winding to ${printSI(peak.value, 'degC')}; its limit is ${limit}, and ${printNumber(check.required)} times the rise is asked for.`,
        advice:
          'Rest longer or without holding, move more gently, cool the motor, or take one of a higher torque for its loss.',
      },
    ];
  },
};
