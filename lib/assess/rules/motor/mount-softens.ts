// A printed mount that the motor warms until it softens.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const mountSoftens: Rule = {
  key: 'mount-softens',
  label: 'Mount that softens',
  class: 'major',
  reason:
    'A warm print creeps under its screws: the motor tilts, the teeth lose their mesh, and at last the motor tears out.',
  source:
    'Heat deflection temperature of the material; heat through the mount, thermal resistances in series',
  judge: (judged) => {
    const check = judged.checks.get('motor.mount');
    if (check?.status !== 'below' || check.capacity === null) return [];
    const { ambient } = judged.design.duty;
    const soft = printSI(ambient.value + check.capacity, 'degC');
    const warm = figureOf(judged, 'motor.mountTemperature') ?? figureOf(judged, 'motor.caseTemperature');
    return [
      {
        at: 'motor.mountMaterial',
        class: (check.factor ?? 0) < 1 ? 'critical' : 'major',
        text:
          warm === null
            ? `The motor’s heat does not settle; its mount softens at ${soft}.`
            : `The longest hold brings the mount to ${printSI(warm, 'degC')}; it softens at ${soft}.`,
        advice:
          'Put a metal plate between motor and print, shorten the hold, or print the mount of a material for this warmth.',
      },
    ];
  },
};
