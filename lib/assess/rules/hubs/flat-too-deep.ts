// A flat as deep as the radius of its shaft or deeper.
import type { Rule } from '../rule';
import { eachHub } from './walk';

export const flatTooDeep: Rule = {
  key: 'flat-too-deep',
  label: 'Flat deeper than the radius',
  class: 'critical',
  reason:
    'A flat that reaches the axis leaves less than half of the shaft, and nothing centres the hub any more.',
  source: 'Geometry',
  judge: (judged) =>
    eachHub(judged, ({ hub, at, place }) => {
      if (hub.kind !== 'flat' || hub.diameter === null || hub.flatDepth === null) return null;
      if (2 * hub.flatDepth < hub.diameter) return null;
      return {
        at: `${at}.flatDepth`,
        text: `${place}: a flat ${hub.flatDepth} mm deep on a shaft of ${hub.diameter} mm reaches its axis.`,
        advice: 'Enter the depth from the round to the flat; a tenth of the diameter is usual.',
      };
    }),
};
