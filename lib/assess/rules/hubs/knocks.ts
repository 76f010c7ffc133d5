// A plastic hub joined by a shape with play, under a torque that turns round.
import type { Rule } from '../rule';
import { eachHub, isPlastic } from './walk';

const loose = new Set(['key', 'flat', 'polygon', 'spline']);

export const knocks: Rule = {
  key: 'hub-knocks',
  label: 'Joint with play that is knocked',
  class: 'minor',
  reason:
    'Every reversal carries the joint through its play. In plastic the edges are hammered, the play grows, and the loop sees it as backlash.',
  source: 'Common practice, no source',
  judge: (judged) => {
    if (judged.document.drive.direction !== 'reversing') return [];
    return eachHub(judged, ({ hub, at, place, material }) =>
      loose.has(hub.kind) && isPlastic(material)
        ? {
            at,
            text: `${place}: the drive turns round, and what play its joint has is knocked through each time.`,
            advice:
              'Take the play out with a close fit, glue or a clamp beside it, and look at it after the first hours.',
          }
        : null,
    );
  },
};
