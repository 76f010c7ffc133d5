// An integral part that may wind up to full command.
import type { Rule } from '../rule';

export const integralWithoutLimit: Rule = {
  key: 'integral-without-limit',
  label: 'Integral without limit',
  class: 'major',
  reason:
    'While something holds the output, an integral without limit grows to full command; let go, the output shoots past.',
  source: 'Windup: Åström and Murray, Feedback Systems, section on integrator windup, from memory',
  judge: ({ document: { loop, drive } }) => {
    if (loop.ki === null || loop.ki <= 0 || drive.lag === null) return [];
    if (loop.integralLimit !== null && loop.integralLimit < 100) return [];
    return [
      {
        at: 'loop.integralLimit',
        class: loop.integralLimit === null ? 'minor' : 'major',
        text:
          loop.integralLimit === null
            ? 'There is an integral gain, and how far the integral may wind up is not entered.'
            : 'The integral alone may wind up to full command.',
        advice:
          'Limit the integral to what holds the load: some 10 % to 40 % of full command, and let it stand still while the command is at its limit.',
      },
    ];
  },
};
