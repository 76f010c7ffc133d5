// A hub of plastic that holds by friction alone.
import type { Rule } from '../rule';
import { eachHub, isPlastic } from './walk';

const words = { clamp: 'is clamped on', flange: 'is screwed flat on', press: 'is pressed on' } as const;

export const gripsPlastic: Rule = {
  key: 'hub-grips-plastic',
  label: 'Hub that grips plastic',
  class: 'minor',
  reason:
    'Plastic creeps away from what presses on it: after weeks a fraction of the grip is left, warm even less. Joints that carry torque want keys, splines, profiles or dowels.',
  source: 'Rules of printing: assume little preload left; common practice',
  judge: (judged) =>
    eachHub(judged, ({ hub, at, place, material, shaft }) => {
      if (hub.kind !== 'clamp' && hub.kind !== 'flange' && hub.kind !== 'press') return null;
      const onPlastic = shaft.kind !== 'unnamed' && isPlastic(shaft.material);
      if (!isPlastic(material) && !onPlastic) return null;
      return {
        at,
        class: judged.document.duty.consequence === 'harm' ? 'major' : 'minor',
        text: `${place} ${words[hub.kind]} with plastic between, so its grip creeps away.`,
        advice: 'Add a key, a profile or dowels that carry the torque when the grip is gone.',
      };
    }),
};
