// A set screw on a shaft about as hard as its point.
import { property } from '@/lib/catalog/materials/materials';
import type { Rule } from '../rule';
import { eachHub } from './walk';

/** From this tensile strength on, some 30 HRC, a point no longer bites. */
const hard = 900e6;

export const setScrewHardShaft: Rule = {
  key: 'set-screw-hard-shaft',
  label: 'Set screw on a hard shaft',
  class: 'major',
  reason:
    'The holding force of a set screw is that of a point that has bitten into a softer shaft. On a hard or hardened shaft it slides, at a fraction of the tabulated torque.',
  source:
    'Makers’ texts (from memory): the shaft at least 10 HRC softer than the point; 900 MPa as its limit is common practice, no source',
  judge: (judged) =>
    eachHub(judged, ({ hub, at, place, shaft }) => {
      if (hub.kind !== 'setScrew' || shaft.kind === 'unnamed' || shaft.material === null) return null;
      const strength = property(shaft.material, 'tensile_xy');
      if (strength === undefined || strength.si < hard) return null;
      return {
        at,
        text: `${place}: its set screws press on a shaft of ${strength.value} MPa, too hard for a point to bite.`,
        advice: 'Grind a flat or a dimple for the screw, or use a key, a clamp or a profile.',
      };
    }),
};
