// A helical stage whose axial force nothing is named to take.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachStage } from '../stages';

export const thrust: Rule = {
  key: 'thrust',
  label: 'Axial force of helical stages',
  class: 'major',
  reason:
    'A single-helical stage pushes both shafts along their axes and turns over with the direction of rotation. Unheld, the gears walk out of mesh or press on the case.',
  source: 'Mechanics of helical gears; ISO 21771:2007',
  judge: (judged) =>
    eachStage(judged, ({ stage, at, place }) => {
      if (stage.kind !== 'helical' || stage.helixAngle === 0 || stage.axialBearing !== 'unnamed') return null;
      const force = figureOf(judged, `${at}.axialForce`);
      const words = force === null ? '' : ` of ${printSI(force, 'N')} at the peak`;
      return {
        at: `${at}.axialBearing`,
        text: `${place} is helical and pushes its shafts with an axial force${words}; nothing is named that takes it.`,
        advice:
          'Name the bearing or shoulder that takes it in both directions, or use a double-helical pair.',
      };
    }),
};
