// A stage whose kind, helix angle and ratio do not fit together.
import { printNumber, printQuantity } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { eachPair } from '../stages';

export const stageKind: Rule = {
  key: 'stage-kind',
  label: 'Kind of a stage against its helix angle',
  class: 'major',
  reason:
    'A stage is worked by its kind: with a helix angle that does not fit, the drawing and the calculation are of two different gears.',
  source: 'ISO 21771:2007, definitions',
  judge: (judged) =>
    eachPair(judged, ({ stage, at, place }) => {
      const { kind, helixAngle } = stage;
      if (kind === 'spur' && helixAngle !== 0)
        return {
          at: `${at}.helixAngle`,
          text: `${place} is entered as spur with a helix angle of ${printQuantity(helixAngle, 'deg')}; it is worked as spur.`,
          advice: 'Set the helix angle to 0 or the kind to helical.',
        };
      if ((kind === 'helical' || kind === 'doubleHelical') && helixAngle === 0)
        return {
          at: `${at}.helixAngle`,
          text: `${place} is entered as ${kind === 'helical' ? 'helical' : 'double-helical'} with a helix angle of 0.`,
          advice: 'Enter the helix angle or set the kind to spur.',
        };
      return null;
    }),
};

export const stepUp: Rule = {
  key: 'step-up',
  label: 'Stage that steps up',
  class: 'minor',
  reason:
    'A stage in which the pinion has more teeth than the wheel gives torque away and raises speed; in an actuator that is seldom meant.',
  source: 'Common practice, no source',
  judge: (judged) =>
    eachPair(judged, ({ stage, at, place }) => {
      const { pinion, wheel } = stage;
      if (wheel.teeth >= pinion.teeth) return null;
      return {
        at: `${at}.ratio`,
        text: `${place} has a ratio of ${printNumber(wheel.teeth / pinion.teeth)}: its pinion, on the motor’s side, is the larger gear.`,
        advice: 'Check that pinion and wheel are not exchanged.',
      };
    }),
};
