// Two points at no load that no motor can have.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const noLoadPointsDisagree: Rule = {
  key: 'no-load-points-disagree',
  label: 'Points at no load',
  class: 'minor',
  reason:
    'Drag rises with speed, and some of it is left at rest. Points that say otherwise are measured wrong, and are not used.',
  source: 'Eddy-current and friction torque; energy balance',
  judge: (judged) => {
    const { noLoadCurrent, noLoadVoltage, secondNoLoadCurrent, secondNoLoadVoltage } = judged.design.motor;
    if (noLoadCurrent === null || noLoadVoltage === null) return [];
    if (secondNoLoadCurrent === null || secondNoLoadVoltage === null) return [];
    if (figureOf(judged, 'motor.dryFriction') !== null) return [];
    const point = (I: typeof noLoadCurrent, U: typeof noLoadCurrent) =>
      `${printSI(I.value, 'A')} at ${printSI(U.value, 'V')}`;
    return [
      {
        at: 'motor.secondNoLoadCurrent',
        text: `${point(noLoadCurrent, noLoadVoltage)} and ${point(secondNoLoadCurrent, secondNoLoadVoltage)} cannot both be true of one motor; half of the drag is taken to grow with speed instead.`,
        advice: 'Measure both again, warm, and let the current settle at each voltage.',
      },
    ];
  },
};
