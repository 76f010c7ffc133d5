// A press fit without interference.
import type { Rule } from '../rule';
import { eachHub } from './walk';

export const noInterference: Rule = {
  key: 'press-without-interference',
  label: 'Press fit without interference',
  class: 'critical',
  reason: 'A press fit holds by the interference alone. Without it the hub turns on its shaft at once.',
  source: 'Lamé, thick-walled cylinders: no interference, no pressure',
  judge: (judged) =>
    eachHub(judged, ({ hub, at, place }) =>
      hub.kind === 'press' && hub.interference === 0
        ? {
            at: `${at}.interference`,
            text: `${place}: it is pressed on with no interference, so it holds nothing.`,
            advice: 'Enter how much larger the shaft is than the bore, or join it by its shape.',
          }
        : null,
    ),
};
