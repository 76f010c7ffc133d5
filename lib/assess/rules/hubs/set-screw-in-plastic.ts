// A set screw whose thread is in plastic.
import type { Rule } from '../rule';
import { eachHub, isPlastic } from './walk';

export const setScrewInPlastic: Rule = {
  key: 'set-screw-in-plastic',
  label: 'Set screw in a plastic hub',
  class: 'major',
  reason:
    'A thread or insert in plastic gives way long before a set screw is seated, and what force it keeps creeps away within days.',
  source: 'Common practice, no source; pull-out forces of inserts in the rules of printing',
  judge: (judged) =>
    eachHub(judged, ({ hub, at, place, material }) =>
      hub.kind === 'setScrew' && isPlastic(material)
        ? {
            at,
            text: `${place}: its set screws are held by plastic.`,
            advice:
              'Put the screws into a metal ring pressed or screwed to the hub, or join it by its shape.',
          }
        : null,
    ),
};
