// How the layers of a printed gear lie.
import { material } from '@/lib/catalog/materials/materials';
import type { Rule } from '../rule';
import { eachGear, isMetal } from '../stages';

export const layers: Rule = {
  key: 'layers',
  label: 'Layers of printed teeth',
  class: 'major',
  reason:
    'Printed upright, the teeth bend across the layers, where prints keep roughly half of their strength (38 % with short fibres) and scatter most.',
  source: 'Strength across over in the layers: rows of the material catalogue; common practice',
  judge: (judged) =>
    eachGear(judged, ({ gear, gearAt, name }) => {
      const { process, name: of } = material(gear.material);
      const printed = !isMetal(gear) && process !== 'machined';
      if (printed && gear.build === 'upright')
        return {
          at: `${gearAt}.build`,
          text: `${name} is printed upright, so its teeth are loaded across the layers.`,
          advice: 'Print it flat: layers across the axis.',
        };
      if (printed && gear.build === 'solid')
        return {
          at: `${gearAt}.build`,
          class: 'minor',
          text: `${name} is of ${of} and entered as without layers; it is worked as printed flat.`,
          advice: 'Enter how it is printed, or the material it is machined from.',
        };
      return null;
    }),
};
