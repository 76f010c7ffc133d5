// A warm motor on a mount that nobody has described.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

/** K: 60 °C, at which the common printing plastics of low temperature have lost their strength. */
const warm = 333.15;

export const mountNotTold: Rule = {
  key: 'mount-not-told',
  label: 'Mount of a warm motor',
  class: 'minor',
  reason: 'Motors are bolted to prints, and many prints soften from 60 °C on.',
  source:
    'Heat deflection temperatures of printing plastics; the limit of 60 °C is common practice, no source',
  judge: (judged) => {
    const shell = figureOf(judged, 'motor.caseTemperature');
    if (judged.document.motor.mountMaterial !== null || shell === null || shell <= warm) return [];
    return [
      {
        at: 'motor.mountMaterial',
        text: `The longest hold brings the motor’s case to ${printSI(shell, 'degC')}, and what it is mounted on is not entered.`,
        advice: 'Enter the material of the mount, and how the heat passes through it.',
      },
    ];
  },
};
