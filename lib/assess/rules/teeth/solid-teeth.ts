// Printed teeth that are not filled.
import { printNumber } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { eachGear, isMetal } from '../stages';

export const solidTeeth: Rule = {
  key: 'solid-teeth',
  label: 'Teeth printed solid',
  class: 'minor',
  reason:
    'A tooth is too small for infill to be worth its weight: strength falls faster than the filled share, and the notch between wall and infill starts cracks.',
  source: 'Common practice; cellular-solid scaling in the rules of the material catalogue (from memory)',
  judge: (judged) =>
    eachGear(judged, ({ gear, gearAt, name }) => {
      if (isMetal(gear) || gear.solidFraction >= 100) return null;
      return {
        at: `${gearAt}.solidFraction`,
        text: `${name}: teeth and rim are filled to ${printNumber(gear.solidFraction)} %.`,
        advice: 'Print teeth and rim solid; save weight in the web.',
      };
    }),
};
