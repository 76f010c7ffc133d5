// Gear bodies of which nothing is entered: they are taken as full.
import type { Rule } from '../rule';
import { eachPair } from '../stages';

export const bodyUnknown: Rule = {
  key: 'body-unknown',
  label: 'Gear bodies not described',
  class: 'minor',
  reason:
    'The root stress is worked for teeth on a full body. On a hollow wheel or around a thick shaft it can be half as much again, and nothing here would show it.',
  source: 'ISO 6336-3:2006, rim thickness factor (from memory); house rule: unknown is never a pass',
  judge: (judged) =>
    eachPair(judged, ({ stage, at, place }) => {
      const open = [
        { words: 'pinion', side: 'pinion', unknown: stage.pinion.rim === null && !told(stage.inputHub) },
        {
          words: stage.kind === 'internal' ? 'ring' : 'wheel',
          side: 'wheel',
          unknown: stage.wheel.rim === null && (stage.kind === 'internal' || !told(stage.outputHub)),
        },
      ].filter(({ unknown }) => unknown);
      const [first] = open;
      if (first === undefined) return null;
      return {
        at: `${at}.${first.side}.rim`,
        text: `${place}: nothing tells how thick the body of ${open.map(({ words }) => words).join(' and ')} is, so a full one is taken.`,
        advice: 'Enter the rim under the teeth, or describe the joint of the gear with its shaft.',
      };
    }),
};

interface HubLike {
  readonly kind: string;
  readonly diameter?: number | null;
}

/** One piece with its shaft, or around a hole of known size. */
function told(hub: HubLike): boolean {
  return hub.kind === 'integral' || (hub.diameter ?? null) !== null;
}
