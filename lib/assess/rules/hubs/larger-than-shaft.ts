// A hub with a bore larger than the shaft it is said to sit on.
import type { Rule } from '../rule';
import { eachHub } from './walk';

/** Bores and journals are entered rounded. */
const rounding = 1.01;
const round = new Set(['key', 'flat', 'setScrew', 'clamp', 'press']);

export const hubLargerThanShaft: Rule = {
  key: 'hub-larger-than-shaft',
  label: 'Hub larger than its shaft',
  class: 'major',
  reason: 'A hub cannot be joined at a diameter that its shaft does not have; its torque is then overstated.',
  source: 'Geometry',
  judge: (judged) =>
    eachHub(judged, ({ hub, at, place, shaft }) => {
      if (!round.has(hub.kind) || !('diameter' in hub) || hub.diameter === null) return null;
      if (shaft.kind !== 'turning' || shaft.diameter === null) return null;
      const largest = Math.max(shaft.diameter, shaft.shoulderDiameter ?? 0);
      if (hub.diameter <= largest * rounding) return null;
      return {
        at: `${at}.diameter`,
        text: `${place}: it is joined at ${hub.diameter} mm, and its shaft is ${largest} mm thick.`,
        advice:
          'Enter the diameter of the joint as the shaft has it, or the thicker side of the shaft’s shoulder.',
      };
    }),
};
