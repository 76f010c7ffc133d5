// A face so wide for its module that the load will not spread over it.
import { printNumber } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { eachPair } from '../stages';

const widest = 12;

export const wideFace: Rule = {
  key: 'wide-face',
  label: 'Face width against module',
  class: 'minor',
  reason:
    'Beyond 12 modules a shaft that is not quite parallel loads one end of the teeth; the stresses here take the load as spread evenly.',
  source: 'Range of the load factor in VDI 2736 Part 2:2014, b/m ≤ 12 (from memory)',
  judge: (judged) =>
    eachPair(judged, ({ stage, at, place }) => {
      const width = stage.kind === 'doubleHelical' ? stage.faceWidth / 2 : stage.faceWidth;
      const modules = width / stage.module;
      if (modules <= widest + 1e-9) return null;
      const each = stage.kind === 'doubleHelical' ? 'each half of the face' : 'the face';
      return {
        at: `${at}.faceWidth`,
        text: `${place}: ${each} is ${printNumber(modules)} modules wide; the calculation holds up to ${widest}.`,
        advice: 'Take a larger module or a narrower face, or show that the shafts are stiff and parallel.',
      };
    }),
};
