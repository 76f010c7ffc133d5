// Teeth too fine for the way they are printed.
import { material } from '@/lib/catalog/materials/materials';
import { printNumber } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { eachGear } from '../stages';

const finest = 0.8;

export const smallModule: Rule = {
  key: 'small-module',
  label: 'Fine teeth, extruded',
  class: 'minor',
  reason:
    'A nozzle of 0.4 mm cannot lay two walls into a tooth below about module 0.8: the tooth becomes one bead, and its form error is a large share of it.',
  source: 'Common practice, no source',
  judge: (judged) =>
    eachGear(judged, ({ module, gear, gearAt, name }) => {
      if (material(gear.material).process !== 'FDM' || module >= finest) return null;
      return {
        at: gearAt,
        text: `${name} is extruded with module ${printNumber(module)} mm.`,
        advice: `Take module ${finest} mm or more, a finer nozzle, or another process for this gear.`,
      };
    }),
};
