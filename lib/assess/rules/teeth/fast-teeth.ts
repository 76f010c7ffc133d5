// Teeth that run faster than the load factors hold for.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachMesh } from '../stages';

const fastest = 5;

export const fastTeeth: Rule = {
  key: 'fast-teeth',
  label: 'Pitch-line velocity',
  class: 'minor',
  reason:
    'Above 5 m/s every error of pitch strikes: the teeth see more than the torque and the shock factor say, and printed teeth have the largest errors.',
  source: 'Range of the load factor in VDI 2736 Part 2:2014, v ≤ 5 m/s (from memory)',
  judge: (judged) =>
    eachMesh(judged, ({ at, place }) => {
      const velocity = figureOf(judged, `${at}.pitchLineVelocity`);
      if (velocity === null || velocity <= fastest) return null;
      return {
        at: `${at}.pitchLineVelocity`,
        text: `${place} runs at ${printSI(velocity, 'm/s')} on its pitch line; the calculation holds up to ${fastest} m/s.`,
        advice: 'Take a smaller pinion or a slower motor, or machine this pair.',
      };
    }),
};
